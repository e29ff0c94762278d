using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Passagework.Foundation;
using static ArchUnitNET.Fluent.ArchRuleDefinition;

namespace Passagework.Tests.Architecture;

public sealed class FolderDependencyTests
{
    private static readonly ArchUnitNET.Domain.Architecture Engine = new ArchLoader()
        .LoadAssemblies(typeof(Fraction).Assembly)
        .Build();

    public static TheoryData<string> AreaNames => [.. Areas.All.Select(area => area.Area)];

    [Theory]
    [MemberData(nameof(AreaNames))]
    public void Area_uses_only_the_areas_on_its_line(string area)
    {
        var line = Areas.All.Single(entry => entry.Area == area);
        var forbidden = Areas.All.Select(entry => entry.Area).Except(line.MayUse).Where(name => name != area);
        var rule = Types()
            .That()
            .ResideInNamespaceMatching(Inside([area]))
            .Should()
            .NotDependOnAny(Types().That().ResideInNamespaceMatching(Inside(forbidden)))
            .WithoutRequiringPositiveResults();

        var broken = rule.Evaluate(Engine)
            .Where(result => !result.Passed)
            .Select(result => result.Description);

        Offenders.AreNone(broken);
    }

    [Fact]
    public void Every_area_uses_only_areas_above_it()
    {
        var names = Areas.All.Select(area => area.Area).ToList();

        var below = Areas.All.SelectMany(
            (entry, at) =>
                entry
                    .MayUse.Where(used => !names.Take(at).Contains(used))
                    .Select(used => $"{entry.Area} > {used}")
        );

        Offenders.AreNone(below);
    }

    [Fact]
    public void Areas_of_the_engine_are_the_declared_ones()
    {
        var found = typeof(Fraction)
            .Assembly.GetTypes()
            .Select(type => type.Namespace ?? string.Empty)
            .Where(name => name.StartsWith("Passagework", StringComparison.Ordinal))
            .Select(Areas.Of)
            .Distinct()
            .Order(StringComparer.Ordinal);

        Assert.Equal(Areas.All.Select(area => area.Area).Order(StringComparer.Ordinal), found);
    }

    [Fact]
    public void Area_uses_only_the_base_library_and_its_own_packages()
    {
        var foreign = Engine
            .Types.SelectMany(type => type.Dependencies)
            // A generic parameter belongs to no assembly.
            .Where(use => use.Target is not GenericParameter)
            .Select(use => (Area: Areas.Of(use.Origin.Namespace.FullName), Package: PackageOf(use.Target)))
            .Where(use => use.Area.Length > 0 && !IsBase(use.Package) && !Areas.Packages.Contains(use))
            .Select(use => $"{use.Area} > {use.Package}")
            .Distinct();

        Offenders.AreNone(foreign);
    }

    private static string Inside(IEnumerable<string> areas) =>
        $@"^Passagework\.({string.Join('|', areas)})(\.|$)";

    // A generic parameter, such as those of the compiler's own code for inline arrays, belongs to no assembly.
    // The assembly's name is its full display name: the part before the first comma is the package.
    private static string PackageOf(IType type) =>
        type is GenericParameter ? "System." : type.Assembly.Name.Split(',')[0];

    private static bool IsBase(string package) =>
        package == "Passagework" || package.StartsWith("System.", StringComparison.Ordinal);
}
