using System.Xml.Linq;

namespace Passagework.Tests.Architecture;

public sealed class PackageReferenceTests
{
    [Theory]
    [InlineData("Passagework", "SkiaSharp", "SkiaSharp.NativeAssets.Linux.NoDependencies")]
    [InlineData("Passagework.Cli", "System.CommandLine")]
    public void Project_references_only_its_packages(string project, params string[] packages)
    {
        var file = Path.Combine(Repository.Root, "src", project, project + ".csproj");

        var referenced = XDocument
            .Load(file)
            .Descendants("PackageReference")
            .Select(reference => reference.Attribute("Include")?.Value);

        Assert.Equal(packages, referenced);
    }
}
