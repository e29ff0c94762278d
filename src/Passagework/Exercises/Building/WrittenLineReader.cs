using System.Collections.Immutable;
using Passagework.Foundation;
using Passagework.Instrument;

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

    // The highest tone is the note, the others sound with it.
    private DraftNote Note(WrittenEntry entry)
    {
        var tones = entry
            .With.Prepend(new WrittenTone(entry.Place, entry.Pitch))
            .OrderByDescending(KeyOf)
            .ToImmutableArray();
        return new DraftNote
        {
            Place = tones[0].Place,
            Pitch = tones[0].Pitch,
            With = tones.RemoveAt(0),
            Group = _group,
            InGroup = _inGroup,
            Accent = entry.Accent,
            Slur = entry.Slur,
        };
    }

    private int KeyOf(WrittenTone tone) => LineBuilder.KeyOf(tone, recipe.Instrument);

    private Fault? WhyUnplayable(WrittenEntry entry, string path) =>
        WhyUnplayable(
            new WrittenTone(entry.Place, entry.Pitch),
            $"{path}.{(entry.Pitch is null ? "place" : "pitch")}"
        )
        ?? Bounds.Each(entry.With, (tone, index) => WhyUnplayable(tone, $"{path}.with[{index}]"))
        ?? (
            entry.With.Length < recipe.Instrument.Tuning.StringCount
                ? null
                : new Fault(
                    $"a chord of {entry.With.Length + 1} tones",
                    $"{path}.with",
                    $"at most {recipe.Instrument.Tuning.StringCount}, one on each string"
                )
        );

    private Fault? WhyUnplayable(WrittenTone tone, string path)
    {
        var instrument = recipe.Instrument;
        if (tone.Place is { } place && !instrument.Has(place))
        {
            return new Fault(
                $"the instrument has no place {place}",
                path,
                $"strings 1 to {instrument.Tuning.StringCount}, frets 0 to {instrument.PlayableFrets}"
            );
        }

        return tone.Pitch is { } pitch && !instrument.PlacesOf(pitch.Midi).Any()
            ? new Fault($"the instrument has no {pitch}", path, "a pitch within its range")
            : null;
    }
}
