namespace ShelfSafe.Reports.Html;

/// <summary>The head and foot of the page, with its style inside: readable on a phone, and printable in grey.</summary>
internal static class ReportHtmlShell
{
    /// <summary>What closes the page.</summary>
    public const string End = "</main>\n</body>\n</html>\n";

    private const string Style = """
        :root{--ink:#23211c;--paper:#fffdf7;--line:#8a8371;--stop:#8c1c13;--change:#7a4b00;--care:#1f4e5f}
        *{box-sizing:border-box}
        body{margin:0;background:var(--paper);color:var(--ink);font:1.05rem/1.55 Georgia,"Times New Roman",serif}
        main{max-width:44rem;margin:0 auto;padding:1rem;overflow-wrap:anywhere}
        h1,h2,h3{font-family:"Trebuchet MS",Verdana,sans-serif;line-height:1.25}
        h1{border-bottom:.4rem double var(--line);padding-bottom:.4rem}
        h2{margin-top:2rem;border-left:.5rem solid var(--line);padding-left:.6rem;font-size:1.25rem}
        h3{margin:0;font-size:1.05rem}
        .verdict{border:.15rem solid;border-radius:.5rem;padding:.8rem;font-size:1.2rem}
        .verdict.stop{border-style:double;border-width:.4rem;color:var(--stop)}
        .verdict.change{border-style:dashed;color:var(--change)}
        .finding{border-left:.3rem solid var(--line);padding:.2rem .8rem;margin:1rem 0}
        .finding.stop{border-left:.6rem double var(--stop)}
        .finding.change{border-left:.4rem dashed var(--change)}
        .recipe{white-space:pre-wrap;border:.1rem solid var(--line);border-radius:.5rem;padding:1rem;background:#fff}
        mark{background:#f3ecd2;color:var(--ink);text-decoration:underline .1rem}
        mark.stop{background:#f7d9d5;text-decoration-style:double}
        mark.change{background:#f8e3b8;text-decoration-style:dashed}
        .tag{font:.8rem "Trebuchet MS",Verdana,sans-serif;color:var(--ink);margin-left:.2rem}
        .wide{overflow-x:auto}
        table{border-collapse:collapse;width:100%;font-size:.95rem}
        caption{text-align:left;font-weight:bold;padding:.3rem 0}
        th,td{border:.06rem solid var(--line);padding:.3rem .5rem;text-align:left;overflow-wrap:normal}
        a{color:var(--care)}
        a:focus-visible,[tabindex]:focus-visible{outline:.2rem solid var(--care);outline-offset:.1rem}
        article+article{border-top:.4rem double var(--line);margin-top:3rem}
        @media (max-width:30rem){main{padding:.6rem}table{font-size:.76rem}th,td{padding:.2rem .25rem}caption{font-size:.9rem}}
        @media print{@page{margin:18mm 15mm}body{font-size:10.5pt;background:#fff;color:#000}main{max-width:none;padding:0}
        .recipe{border-color:#000}.wide{overflow:visible;break-inside:avoid}h2,h3{break-after:avoid}.finding,tr{break-inside:avoid}
        article+article{break-before:page;border:0}.verdict,.verdict.stop,.verdict.change,a{color:#000}mark,mark.stop,mark.change{background:none}}
        """;

    /// <summary>What opens the page; its policy lets nothing be run or loaded.</summary>
    public static string Start(Words words, string title) => Start($"{title} - {words["html.page"]}");

    /// <summary>What opens a page of this title.</summary>
    public static string Start(string title) => $"""
        <!DOCTYPE html>
        <html lang="en">
        <head>
        <meta charset="utf-8">
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta http-equiv="Content-Security-Policy" content="default-src 'none'; style-src 'unsafe-inline'">
        <title>{ReportHtmlText.Safe(title)}</title>
        <style>
        {Style}
        </style>
        </head>
        <body>
        <main>

        """.ReplaceLineEndings("\n");
}
