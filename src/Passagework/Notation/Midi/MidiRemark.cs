using System.Globalization;
using Passagework.Foundation;
using Passagework.Rhythm;

namespace Passagework.Notation;

/// <summary>What a file of ours says about itself in a text event: what ticks alone leave open.</summary>
/// <param name="Swing">How uneven the played times are.</param>
/// <param name="NotesPerBeat">Pulses per felt beat, 1 to 8.</param>
/// <param name="IsExact">Whether every time lies on a whole tick.</param>
internal sealed record MidiRemark(Swing Swing, int NotesPerBeat, bool IsExact)
{
    private const string Head = "passagework: swing ";
    private const string Middle = ", notes per beat ";
    private const string Exact = ", exact";
    private const int LongestText = 100;
    private const int FinestShare = 1000;

    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{Head}{Swing.Share}{Middle}{NotesPerBeat}{(IsExact ? Exact : "")}"
        );

    /// <summary>Reads what <see cref="ToString"/> writes; null for any other text.</summary>
    public static MidiRemark? Parse(string text)
    {
        if (text.Length > LongestText || !text.StartsWith(Head, StringComparison.Ordinal))
        {
            return null;
        }

        var exact = text.EndsWith(Exact, StringComparison.Ordinal);
        var body = text[Head.Length..^(exact ? Exact.Length : 0)];
        var parts = body.Split(Middle);
        return
            parts.Length == 2
            && Fraction.TryParse(parts[0], out var share)
            && share.Denominator <= FinestShare
            && Swing.TryOf(share, out var swing)
            && int.TryParse(parts[1], NumberStyles.None, CultureInfo.InvariantCulture, out var perBeat)
            && perBeat is >= 1 and <= 8
            ? new MidiRemark(swing, perBeat, exact)
            : null;
    }
}
