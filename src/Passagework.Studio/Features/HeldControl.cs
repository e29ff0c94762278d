namespace Passagework.Studio.Features;

/// <summary>Tells steps that belong together: the same control, moved again within a moment, as when its key is held.</summary>
/// <typeparam name="T">What is remembered of the last of them; whoever asks sees whether it still holds.</typeparam>
internal sealed class HeldControl<T>(TimeProvider time)
    where T : class
{
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(1);

    private string _control = "";
    private T? _step;
    private DateTimeOffset _when;

    /// <summary>The step just done, when another one of this control goes on with it; else null.</summary>
    public T? Last(string control) =>
        control == _control && time.GetUtcNow() - _when <= Moment ? _step : null;

    /// <summary>A step is done.</summary>
    public void Moved(string control, T step) => (_control, _step, _when) = (control, step, time.GetUtcNow());
}
