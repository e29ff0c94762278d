using System.Diagnostics;

namespace Passagework.Cli.Tests;

/// <summary>The built command as its own process: the same bytes whatever language the machine speaks.</summary>
public sealed class LocaleTests
{
    [Theory]
    [InlineData(
        "measure",
        "groups-of-five-up",
        "--tempo",
        "92.5",
        "--swing",
        "0.62",
        "--player",
        "1.5",
        "--json"
    )]
    [InlineData("measure", "three-per-string-fours-up", "--root", "Eb", "--scale-length", "628.65")]
    [InlineData("show", "first-notes-up-and-down", "--tempo", "92.5")]
    [InlineData("shelf", "--family", "diagonal")]
    [InlineData("measure", "straight-up", "--technique", "INSIDE")]
    public void Answer_is_the_same_in_every_language(params string[] args)
    {
        var plain = Run("C.UTF-8", args);

        Assert.Equal(plain, Run("de_DE.UTF-8", args));
        Assert.Equal(plain, Run("tr_TR.UTF-8", args));
        Assert.NotEqual("", plain.Out + plain.Error);
    }

    [Fact]
    public void Point_is_the_decimal_sign_in_options_too() =>
        Assert.Contains(
            "Tempo: 92.5",
            Run("de_DE.UTF-8", "show", "straight-up", "--tempo", "92.5").Out,
            StringComparison.Ordinal
        );

    private static (int Code, string Out, string Error) Run(string language, params string[] args)
    {
        var start = new ProcessStartInfo("dotnet")
        {
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
            ArgumentList = { Path.Combine(AppContext.BaseDirectory, "Passagework.Cli.dll") },
            Environment = { ["LANG"] = language, ["LC_ALL"] = language },
        };
        foreach (var argument in args)
        {
            start.ArgumentList.Add(argument);
        }

        using var process =
            Process.Start(start) ?? throw new InvalidOperationException("dotnet did not start.");
        var error = process.StandardError.ReadToEndAsync();
        var output = process.StandardOutput.ReadToEnd();
        process.WaitForExit();
        return (process.ExitCode, output, error.GetAwaiter().GetResult());
    }
}
