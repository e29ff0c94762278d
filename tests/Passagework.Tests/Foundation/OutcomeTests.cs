using Passagework.Foundation;

namespace Passagework.Tests.Foundation;

public sealed class OutcomeTests
{
    private static readonly Fault NoSuchFret = new("fret 27 is beyond the neck", "/layout", "at most 22");

    [Fact]
    public void Value_is_its_own_outcome()
    {
        Outcome<int> outcome = 5;

        Assert.True(outcome.TryGet(out var value, out var fault));
        Assert.Equal(5, value);
        Assert.Null(fault);
        Assert.Equal(5, outcome.OrThrow());
    }

    [Fact]
    public void Fault_is_an_outcome_without_value()
    {
        Outcome<string> outcome = NoSuchFret;

        Assert.False(outcome.TryGet(out var value, out var fault));
        Assert.Null(value);
        Assert.Equal(NoSuchFret, fault);
        Assert.Equal(
            "/layout: fret 27 is beyond the neck; at most 22",
            Assert.Throws<InvalidOperationException>(() => outcome.OrThrow()).Message
        );
    }

    [Fact]
    public void Then_goes_on_with_a_value_and_passes_a_fault_along()
    {
        Outcome<int> good = 5;
        Outcome<int> bad = NoSuchFret;

        Assert.Equal("5", good.Then<string>(value => $"{value}").OrThrow());
        Assert.Equal(NoSuchFret, Refusal(good.Then<string>(_ => NoSuchFret)));
        Assert.Equal(NoSuchFret, Refusal(bad.Then<string>(_ => throw new InvalidOperationException())));
    }

    [Theory]
    [InlineData("tempo is 0", "", "", "tempo is 0")]
    [InlineData("/tempo: tempo is 0", "/tempo", "", "tempo is 0")]
    [InlineData("tempo is 0; 1 to 1000", "", "1 to 1000", "tempo is 0")]
    public void Fault_is_one_line(string line, string where, string right, string what) =>
        Assert.Equal(line, new Fault(what, where, right).ToString());

    [Fact]
    public void Fault_found_inside_another_place_says_both()
    {
        Assert.Equal("/rhythm/tempo", new Fault("tempo is 0", "/tempo").At("/rhythm").Where);
        Assert.Equal("/rhythm", new Fault("tempo is 0").At("/rhythm").Where);
    }

    private static Fault? Refusal<T>(Outcome<T> outcome) =>
        outcome.TryGet(out _, out var fault) ? null : fault;
}
