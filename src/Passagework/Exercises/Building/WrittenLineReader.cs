using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>Lays out a line written entry by entry.</summary>
internal sealed class WrittenLineReader(Recipe recipe)
{
    private readonly Draft _draft = new(recipe.Rhythm.StartOffset);
    private readonly bool _byBeat = recipe.Written?.Entries.All(entry => entry.Group is null) ?? false;
    private int _group = -1;
    private int _inGroup;

    /// <summary>The line, or the first entry that the instrument has no place for.</summary>
    public Outcome<Draft> Read(WrittenLine written)
    {
        for (var index = 0; index < written.Entries.Length; index++)
        {
            var entry = written.Entries[index];
            if (WhyUnplayable(entry, $"$.written[{index}]") is { } fault)
            {
                return fault;
            }

            Count(entry);
            if (entry.IsRest)
            {
                _draft.AddRest(entry.Duration);
            }
            else
            {
                _draft.Add(Note(entry), entry.Duration);
            }
        }

        return _draft;
    }

    /// <summary>
    /// Without group numbers every felt beat is a group, numbered by the beat, and a rest counts in the beat where it
    /// begins. With them a rest counts only between notes of one group.
    /// </summary>
    private void Count(WrittenEntry entry)
    {
        var beat = (int)(_draft.End / recipe.Rhythm.Meter.Beat).Floor();
        var group = _byBeat ? beat : (entry.Group ?? _group);
        _inGroup = group == _group ? _inGroup + 1 : 0;
        _group = group;
    }

    private DraftNote Note(WrittenEntry entry) =>
        new()
        {
            Place = entry.Place,
            Pitch = entry.Pitch,
            Group = _group,
            InGroup = _inGroup,
            Accent = entry.Accent,
            Slur = entry.Slur,
        };

    private Fault? WhyUnplayable(WrittenEntry entry, string path)
    {
        var instrument = recipe.Instrument;
        if (entry.Place is { } place && !instrument.Has(place))
        {
            return new Fault(
                $"the instrument has no place {place}",
                $"{path}.place",
                $"strings 1 to {instrument.Tuning.StringCount}, frets 0 to {instrument.PlayableFrets}"
            );
        }

        return entry.Pitch is { } pitch && !instrument.PlacesOf(pitch.Midi).Any()
            ? new Fault($"the instrument has no {pitch}", $"{path}.pitch", "a pitch within its range")
            : null;
    }
}
