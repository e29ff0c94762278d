using System.Collections.Immutable;
using System.Globalization;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Instrument;
using Passagework.Rhythm;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Notation;

/// <summary>Makes the recipe of a piece that was read.</summary>
internal sealed class TabAssembly
{
    private const int UsualFrets = 22;
    private const int MostFrets = 36;
    private readonly TabPiece _piece;
    private readonly bool _topOnly;
    private readonly TabFindings _findings;
    private readonly ImmutableArray<WrittenEntry>.Builder _entries =
        ImmutableArray.CreateBuilder<WrittenEntry>();
    private readonly ImmutableArray<Lock>.Builder _locks = ImmutableArray.CreateBuilder<Lock>();
    private int _notes;

    private TabAssembly(TabPiece piece, TabReading reading, TabFindings findings)
    {
        _piece = piece;
        _topOnly = reading.TopNotesOnly;
        _findings = findings;
    }

    public static Outcome<TabImport> Build(TabPiece piece, TabReading reading, TabFindings findings)
    {
        var assembly = new TabAssembly(piece, reading, findings);
        return assembly.InstrumentOf().Then(assembly.ImportOn);
    }

    private Outcome<TabImport> ImportOn(Fretboard instrument)
    {
        foreach (var note in _piece.Bars.SelectMany(bar => bar.Events))
        {
            Add(note, instrument);
        }

        if (_notes == 0)
        {
            return new Fault("no notes in the tab", _piece.Bars[0].Spot.ToString(), "frets on the strings");
        }

        var header = _piece.Header;
        var recipe = new Recipe
        {
            Title = header.Title,
            Notes = header.Notes,
            Instrument = instrument,
            Rhythm = RhythmOf(),
            Picking = WrittenGuess.Picking(_locks),
            Fretting = new FrettingPlan { Locks = _locks.ToImmutable() },
            Written = new WrittenLine(_entries.ToImmutable()),
        };
        return new TabImport(recipe, _findings.Warnings(), [.. _findings.Kept]);
    }

    private void Add(TabReadEvent note, Fretboard instrument)
    {
        var length = note.Length!.Value; // lengths are settled before
        foreach (var mark in note.Marks)
        {
            _findings.Keep(mark with { Note = note.Place is null ? null : _notes });
        }

        if (note.Place is null)
        {
            AddRest(length);
            return;
        }

        _entries.Add(
            new WrittenEntry
            {
                Place = note.Place,
                With = Held(note, instrument),
                Duration = length,
                Group = note.Group,
                Accent = note.Accent,
                Slur = note.Slur,
            }
        );
        if (note.Finger is not null || note.Stroke is not null)
        {
            _locks.Add(new Lock(_notes, Finger: note.Finger, Stroke: note.Stroke));
        }

        _notes++;
    }

    // Rests next to each other are one.
    private void AddRest(Fraction length)
    {
        if (_entries.Count > 0 && _entries[^1].IsRest)
        {
            _entries[^1] = _entries[^1] with { Duration = _entries[^1].Duration + length };
        }
        else
        {
            _entries.Add(new WrittenEntry { Duration = length });
        }
    }

    private Outcome<Fretboard> InstrumentOf()
    {
        var header = _piece.Header;
        var highest = _piece.Bars.SelectMany(bar => bar.Events).MaxBy(HighestFret);
        var needed = Math.Max(highest is null ? 0 : HighestFret(highest), 0) + header.Capo;
        var frets = header.Frets ?? Math.Max(needed, UsualFrets);
        if (needed > frets || frets > MostFrets)
        {
            var fret = (needed - header.Capo).ToString(CultureInfo.InvariantCulture);
            var least = (needed <= MostFrets ? frets : MostFrets) - header.Capo;
            return new Fault(
                $"fret {fret} is beyond the neck",
                highest?.Spot.ToString() ?? "",
                string.Create(CultureInfo.InvariantCulture, $"0 to {least}")
            );
        }

        return new Fretboard
        {
            Tuning = _piece.Order.Tuning,
            Capo = header.Capo,
            Frets = frets,
        };
    }

    private ImmutableArray<WrittenTone> Held(TabReadEvent note, Fretboard instrument)
    {
        if (note is not { Place: { } top, With: [_, ..] })
        {
            return [];
        }

        if (_topOnly)
        {
            _findings.Warn($"{note.With.Length + 1} notes at once; only the top one is read", note.Spot);
            return [];
        }

        var places = note.With.Insert(0, top);
        var tones = places.Select(place => new ReachedTone(instrument.MidiAt(place), place)).ToList();
        var kept = ChordReach.Keep(tones, instrument);
        foreach (var place in places.Where((_, number) => !kept.Contains(number)))
        {
            _findings.Warn($"{place} left out: no hand holds it with the notes above it", note.Spot);
        }

        return [.. kept.Skip(1).Select(number => new WrittenTone(places[number]))];
    }

    private static int HighestFret(TabReadEvent note) =>
        note.With.Select(place => place.Fret).Append(note.Place?.Fret ?? -1).Max();

    private RhythmPlan RhythmOf()
    {
        var header = _piece.Header;
        return new RhythmPlan
        {
            Meter = _piece.Meter,
            NotesPerBeat = header.NotesPerBeat ?? WrittenGuess.NotesPerBeat(_entries, _piece.Meter),
            StartOffset = _piece.Start,
            TempoBpm = header.TempoBpm,
            Swing = header.Swing,
        };
    }
}
