using System.CommandLine;

namespace Passagework.Studio.Hosting;

/// <summary>The command that starts the studio.</summary>
internal static class StudioCommand
{
    /// <summary>Exit code of a command line that cannot be read.</summary>
    private const int WrongUsage = 2;

    /// <summary>Reads the command line and runs the studio until it is stopped.</summary>
    public static async Task<int> Run(string[] args)
    {
        var data = new Option<string?>("--data")
        {
            Description = $"Folder of the database and its backups. Usually {StudioOptions.UsualDataFolder}",
            HelpName = "DIR",
        };
        var urls = new Option<string?>("--urls")
        {
            Description =
                "Addresses to listen on, such as http://127.0.0.1:5080; more than one with ; between.",
            HelpName = "URL",
        };
        var noBrowser = new Option<bool>("--no-browser") { Description = "Opens no browser." };
        var root = new RootCommand("The studio of Passagework: exercises written, seen, heard and compared.")
        {
            data,
            urls,
            noBrowser,
        };
        var exit = 0;
        root.SetAction(
            async (parsed, stop) =>
                exit = await StudioApp.Run(
                    new StudioOptions(
                        Path.GetFullPath(parsed.GetValue(data) ?? StudioOptions.UsualDataFolder),
                        parsed.GetValue(urls),
                        !parsed.GetValue(noBrowser)
                    ),
                    stop
                )
        );
        var parse = root.Parse(args);
        // Ctrl+C is the host's business, also when it comes twice.
        var code = await parse.InvokeAsync(new InvocationConfiguration { ProcessTerminationTimeout = null });
        if (parse.Errors.Count > 0)
        {
            return WrongUsage;
        }

        return Math.Max(code, exit);
    }
}
