using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Instrument;
using Passagework.Rhythm;
using Passagework.Theory;

namespace Passagework.Notation;

/// <summary>Makes the recipe of a track that was chosen.</summary>
internal sealed class MidiAssembly
{
    private static readonly Fraction Longest = Fraction.Of(64);
    private readonly MidiFrame _frame;
    private readonly MidiLine _line;
    private readonly Fretboard _instrument;
    private readonly MidiFindings _findings;

    private MidiAssembly(MidiFrame frame, MidiLine line, Fretboard instrument, MidiFindings findings)
    {
        _frame = frame;
        _line = line;
        _instrument = instrument;
        _findings = findings;
    }

    public static Outcome<MidiImport> Build(MidiChoice choice, MidiReading reading, MidiFindings findings)
    {
        var frame = MidiFrame.Of(choice, findings);
        return MidiLine
            .Of(choice, frame, reading, findings)
            .Then(line => new MidiAssembly(frame, line, reading.Instrument, findings).Build(choice));
    }

    private Outcome<MidiImport> Build(MidiChoice choice)
    {
        if (WhyUnplayable() is { } fault)
        {
            return fault;
        }

        var recipe = RecipeOf(choice.Title);
        if (!LineBuilder.Build(recipe).TryGet(out _, out var broken))
        {
            return broken;
        }

        if (_findings.NotesLeftOut > 0)
        {
            _findings.Warn(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{_findings.NotesLeftOut} notes that begin together with a higher one are left out"
                )
            );
        }

        return new MidiImport(
            recipe,
            _findings.Warnings(),
            _findings.LeftOut,
            choice.Tracks,
            choice.Track.Number,
            _line.Residual
        )
        {
            NotesLeftOut = _findings.NotesLeftOut,
        };
    }

    private Fault? WhyUnplayable()
    {
        foreach (var note in _line.Notes)
        {
            if (!_instrument.PlacesOf(note.Key).Any())
            {
                return new Fault(
                    $"the instrument has no {PlainPitch(note.Key)}",
                    _frame.PlaceOf(note.Onset),
                    $"pitches that lie on {_instrument.Tuning}, {_instrument.PlayableFrets.ToString(CultureInfo.InvariantCulture)} frets"
                );
            }
        }

        return null;
    }

    private static SpelledPitch PlainPitch(int key) => Speller.Spell(null, [key])[0];

    private SpelledPitch Spelled(int key) => Speller.Spell(_frame.Key?.ToNotes(), [key])[0];

    private Recipe RecipeOf(string? title)
    {
        var bar = _frame.Meter.Bar;
        var first = _line.Notes[0].Onset;
        if (first >= bar)
        {
            var silent = (first / bar).Floor();
            _findings.Warn(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{silent} silent bars at the beginning are left out"
                )
            );
        }

        var sounding = _frame.Key?.ToNotes();
        var pitches = Speller.Spell(sounding, [.. _line.Notes.Select(note => note.Key)]);
        var entries = EntriesOf(pitches);
        return new Recipe
        {
            Title = title,
            // What is written in a recipe is written as if the capo were the nut.
            Notes = sounding?.Transposed(-_instrument.Capo),
            Instrument = _instrument,
            Rhythm = new RhythmPlan
            {
                Meter = _frame.Meter,
                NotesPerBeat = _line.Feel.NotesPerBeat ?? WrittenGuess.NotesPerBeat(entries, _frame.Meter),
                Swing = _line.Feel.Swing,
                StartOffset = first.Modulo(bar),
                TempoBpm = _frame.TempoBpm,
            },
            Written = new WrittenLine(entries),
        };
    }

    private ImmutableArray<WrittenEntry> EntriesOf(ImmutableArray<SpelledPitch> pitches)
    {
        var entries = ImmutableArray.CreateBuilder<WrittenEntry>();
        var time = _line.Notes[0].Onset;
        for (var i = 0; i < pitches.Length; i++)
        {
            var note = _line.Notes[i];
            while (time < note.Onset)
            {
                var rest = Shorter(note.Onset - time);
                entries.Add(new WrittenEntry { Duration = rest });
                time += rest;
            }

            var length = Shorter(note.End - note.Onset);
            entries.Add(
                new WrittenEntry
                {
                    Pitch = pitches[i],
                    With = [.. note.With.Select(key => new WrittenTone(null, Spelled(key)))],
                    Duration = length,
                }
            );
            time += length;
        }

        return entries.ToImmutable();
    }

    private static Fraction Shorter(Fraction length) => length < Longest ? length : Longest;
}
