namespace Passagework.Studio.Tests.Features;

/// <summary>A clock that goes on when it is told to.</summary>
internal sealed class Clock : TimeProvider
{
    private DateTimeOffset _now = new(2026, 11, 25, 8, 0, 0, TimeSpan.Zero);

    public override DateTimeOffset GetUtcNow() => _now;

    public void Forward(TimeSpan by) => _now += by;
}
