namespace ShelfSafe.Tests.Reports;

/// <summary>Texts that try to do something where they are shown, each put into title, ingredient, step and file name.</summary>
internal static class HostileText
{
    /// <summary>The payloads by name.</summary>
    public static IReadOnlyDictionary<string, string> Payloads { get; } = new Dictionary<string, string>(StringComparer.Ordinal)
    {
        ["script"] = "<script>alert(1)</script>",
        ["script-split"] = "</title></style></p><ScRiPt src=//example.org/x.js></sCrIpT >",
        ["javascript-link"] = "[fish](javascript:alert(1)) <javascript:alert(1)> <a href=\"javascript:alert(1)\">x</a>",
        ["data-link"] = "[x](data:text/html;base64,PHNjcmlwdD4=) ![y](https://example.org/pixel.png)",
        ["reference-link"] = "[x][1] [1]: javascript:alert(1)",
        ["event"] = "\" onmouseover=\"alert(1) ' onfocus='alert(1)' autofocus <img src=x onerror=alert(1)>",
        ["svg"] = "<svg onload=alert(1)><a xlink:href=\"javascript:alert(1)\"><text>x</text></a></svg>",
        ["style"] = "<style>@import 'https://example.org/x.css'</style><link rel=stylesheet href=https://example.org>",
        ["comment"] = "--> <!-- ]]> <?php x ?> <base href=https://example.org> <meta http-equiv=refresh content=0>",
        ["bidi"] = "\u202Egnp.efas\u202C \u2066x\u2069 \u200F\u061C\u200B\uFEFF",
        ["escape"] = "\u001b[31mred\u001b[0m \u001b]8;;https://example.org\u0007x\u001b]8;;\u0007 \u009b2J \u0008\u0007\u0000\u007f",
        ["lines"] = "a\u2028b\u2029c\u0085d\u000be\u000cf",
        ["markdown"] = "`x` **b** _i_ | c | ~~~ $m$ {0} {{1}} :smile: www.example.org https://example.org a@example.org",
        ["sarif"] = "[link](1) {0} \\[ \\] {{",
        ["surrogate"] = "a" + '\uD83C' + " b" + '\uDC00',
    };

    /// <summary>Marks that may reach no reader raw: controls, and marks that turn or hide text.</summary>
    public static bool IsPower(char letter) =>
        (char.IsControl(letter) && letter is not '\n') || letter is '\u061C' or '\u200B' or '\u200E' or '\u200F' or '\u2028' or '\u2029' or '\uFEFF' or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069');

    /// <summary>A recipe that carries a payload everywhere.</summary>
    public static string Recipe(string name)
    {
        string payload = Payloads[name].Replace('\0', '\u0001');
        return $"""
            # Stew {payload}

            ## Ingredients {payload}

            - 3 tbsp flour {payload}
            - 500 g {payload}
            - {payload} 2 cups "cream" {payload}

            ## Directions

            1. Stir in the flour {payload} and {payload}.
            """;
    }
}
