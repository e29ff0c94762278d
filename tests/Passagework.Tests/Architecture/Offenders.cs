namespace Passagework.Tests.Architecture;

/// <summary>Ends a rule: it holds when nothing broke it, else everything that did is listed in full.</summary>
internal static class Offenders
{
    public static void AreNone(IEnumerable<string> offenders)
    {
        var list = offenders.ToList();
        Assert.True(list.Count == 0, string.Join(Environment.NewLine, list));
    }
}
