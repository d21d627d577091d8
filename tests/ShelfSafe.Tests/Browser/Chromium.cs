using PuppeteerSharp;
using Xunit;

namespace ShelfSafe.Tests.Browser;

/// <summary>A headless Chromium for the tests of a class; where none is installed the tests are skipped, and say so.</summary>
public sealed class Chromium : IAsyncLifetime
{
    private static readonly string[] _places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/snap/bin/chromium"];

    private IBrowser? _browser;

    public IBrowser Browser
    {
        get
        {
            Assert.SkipWhen(_browser is null, "no Chromium was found; install the package chromium, or name one in SHELFSAFE_CHROMIUM");
            return _browser;
        }
    }

    public async ValueTask InitializeAsync()
    {
        string? program = Environment.GetEnvironmentVariable("SHELFSAFE_CHROMIUM") ?? Array.Find(_places, File.Exists);
        if (program is not null)
        {
            _browser = await Puppeteer.LaunchAsync(new LaunchOptions
            {
                ExecutablePath = program,
                Headless = true,
                Timeout = 120_000,
                Args = ["--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run"],
            });
        }
    }

    public async ValueTask DisposeAsync()
    {
        if (_browser is not null)
        {
            await _browser.CloseAsync();
        }
    }
}
