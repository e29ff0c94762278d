namespace Passagework.Tests.Architecture;

public sealed class FileSizeTests
{
    private const int MostLines = 400;

    [Fact]
    public void Source_files_stay_below_the_cap()
    {
        var files = Repository.SourceFiles().ToList();

        var over = files
            .Select(file => (File: file, Lines: File.ReadLines(Path.Combine(Repository.Root, file)).Count()))
            .Where(file => file.Lines > MostLines)
            .Select(file => $"{file.File}: {file.Lines} lines, at most {MostLines}");

        Assert.Contains(Path.Combine("src", "Passagework", "Foundation", "Fraction.cs"), files);
        Offenders.AreNone(over);
    }
}
