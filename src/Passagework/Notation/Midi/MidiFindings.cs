using System.Collections.Immutable;
using System.Globalization;

namespace Passagework.Notation;

/// <summary>Collects warnings and notes left out while a file is read, with bounded memory.</summary>
internal sealed class MidiFindings
{
    private const int MostWarnings = 100;
    private const int MostLeftOut = 1000;
    private readonly List<MidiWarning> _warnings = [];
    private readonly List<MidiLeftOut> _leftOut = [];
    private int _unlisted;

    public int NotesLeftOut { get; private set; }

    public ImmutableArray<MidiLeftOut> LeftOut => [.. _leftOut];

    public void Warn(string text, string where = "")
    {
        if (_warnings.Count < MostWarnings)
        {
            _warnings.Add(new MidiWarning(text, where));
        }
        else
        {
            _unlisted++;
        }
    }

    public void LeaveOut(int midi, Lazy<string> where)
    {
        NotesLeftOut++;
        if (_leftOut.Count < MostLeftOut)
        {
            _leftOut.Add(new MidiLeftOut(midi, where.Value));
        }
    }

    public ImmutableArray<MidiWarning> Warnings() =>
        _unlisted == 0
            ? [.. _warnings]
            :
            [
                .. _warnings,
                new MidiWarning(
                    string.Create(CultureInfo.InvariantCulture, $"and {_unlisted} more warnings")
                ),
            ];
}
