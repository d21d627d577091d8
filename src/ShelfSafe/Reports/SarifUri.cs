using System.Text;

namespace ShelfSafe.Reports;

/// <summary>Turns a path into the address that a SARIF location holds.</summary>
internal static class SarifUri
{
    private const string Unreserved = "-._~/";

    /// <summary>The address, parts divided by <c>/</c>, and whether it counts from the folder in which the program ran.</summary>
    /// <remarks>An absolute path becomes a <c>file</c> address; standard input has the address <c>stdin:-</c>.</remarks>
    public static (string Uri, bool BelowRoot) Of(string file)
    {
        string path = file.StartsWith("./", StringComparison.Ordinal) ? file[2..] : file;
        if (string.Equals(path, "-", StringComparison.Ordinal))
        {
            return ("stdin:-", false);
        }

        if (path.StartsWith("//", StringComparison.Ordinal))
        {
            return ("file:" + Encoded(path), false);
        }

        if (path.StartsWith('/'))
        {
            return ("file://" + Encoded(path), false);
        }

        if (path.Length > 2 && char.IsAsciiLetter(path[0]) && path[1] == ':' && path[2] == '/')
        {
            return ($"file:///{path[..2]}{Encoded(path[2..])}", false);
        }

        // Section 3.4.4: under a base the address has no ".." parts.
        return (Encoded(path), !path.Split('/').Contains("..", StringComparer.Ordinal));
    }

    private static string Encoded(string path)
    {
        StringBuilder built = new(path.Length);
        foreach (byte unit in Encoding.UTF8.GetBytes(path))
        {
            char letter = (char)unit;
            if (char.IsAsciiLetterOrDigit(letter) || Unreserved.Contains(letter, StringComparison.Ordinal))
            {
                built.Append(letter);
            }
            else
            {
                built.Append('%').Append(Convert.ToHexString([unit]));
            }
        }

        return built.ToString();
    }
}
