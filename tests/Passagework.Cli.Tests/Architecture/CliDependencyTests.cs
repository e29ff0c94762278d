namespace Passagework.Cli.Tests.Architecture;

public sealed class CliDependencyTests
{
    [Fact]
    public void Command_line_uses_only_the_engine_and_the_base_library()
    {
        // System.CommandLine is the one package, and carries the prefix of the base library.
        var others = typeof(Program)
            .Assembly.GetReferencedAssemblies()
            .Select(assembly => assembly.Name ?? string.Empty)
            .Where(name => name != "Passagework" && !name.StartsWith("System.", StringComparison.Ordinal));

        Assert.Equal([], others);
    }
}
