using System.Collections.Immutable;
using System.Globalization;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Notation;

/// <summary>A note of the line with its written time.</summary>
/// <param name="Key">The highest of the notes that begin together.</param>
/// <param name="With">The others that are kept, from high to low.</param>
/// <param name="Onset">As a fraction of a whole note.</param>
/// <param name="End">As a fraction of a whole note.</param>
internal readonly record struct MidiNote(int Key, ImmutableArray<int> With, Fraction Onset, Fraction End);

/// <summary>Makes a line out of the sounds of a track.</summary>
internal sealed class MidiLine
{
    private const int MostOnsets = 20_000;
    private const int LongestSilence = 64;

    // A note that leaves less than this share of the way to the next one silent was meant to last.
    private const int ShareOfGap = 4;
    private const int ShortestPart = 4;
    private readonly MidiFrame _frame;
    private readonly MidiGrid _grid;
    private readonly MidiFindings _findings;
    private readonly MidiReading _reading;
    private double _largest;
    private double _sum;
    private int _onsets;

    private MidiLine(MidiFrame frame, MidiGrid grid, MidiReading reading, MidiFindings findings)
    {
        _frame = frame;
        _grid = grid;
        _reading = reading;
        _findings = findings;
    }

    public ImmutableArray<MidiNote> Notes { get; private set; } = [];

    public MidiFeel Feel { get; private init; }

    public MidiResidual Residual
    {
        get
        {
            var mean = _sum / _onsets;
            var ms = _frame.MsPerTick;
            return new MidiResidual(_largest, mean, _largest * ms, mean * ms);
        }
    }

    public static Outcome<MidiLine> Of(
        MidiChoice choice,
        MidiFrame frame,
        MidiReading reading,
        MidiFindings findings
    )
    {
        var onsets = choice.Sounds.Select(sound => sound.Start).Distinct().Order().ToList();
        var longest = (long)MostOnsets * LongestSilence * 4 * frame.Division;
        if (onsets.Count > MostOnsets || onsets[^1] - frame.Origin > longest)
        {
            return new Fault(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"track {choice.Track.Number} has {onsets.Count} onsets over {onsets[^1]} ticks"
                ),
                "",
                "a line of at most 20,000 notes and rests"
            );
        }

        var feel = FeelOf(frame, reading.FindSwing, onsets, findings);
        var line = new MidiLine(frame, new MidiGrid(frame, feel, onsets), reading, findings) { Feel = feel };
        line.Build(choice.Sounds);
        return line;
    }

    private static MidiFeel FeelOf(MidiFrame frame, bool findSwing, List<long> onsets, MidiFindings findings)
    {
        if (frame.Remark is { } remark)
        {
            return new MidiFeel(remark.Swing, remark.NotesPerBeat);
        }

        return (findSwing ? MidiSwingFinder.Find(frame, onsets, findings) : null) ?? default;
    }

    private void Build(IReadOnlyList<MidiSound> sounds)
    {
        var times = sounds
            .GroupBy(sound => sound.Start)
            .OrderBy(group => group.Key)
            .Select(group => (Time: Settled(group.Key), Sounds: group))
            .GroupBy(group => group.Time)
            .OrderBy(group => group.Key)
            .Select(group =>
                (Time: group.Key, Kept: KeptOf([.. group.SelectMany(entry => entry.Sounds)], group.Key))
            )
            .ToList();
        var cut = 0;
        var notes = ImmutableArray.CreateBuilder<MidiNote>(times.Count);
        for (var i = 0; i < times.Count; i++)
        {
            var (time, kept) = times[i];
            var top = kept[0];
            var next = i + 1 < times.Count ? times[i + 1].Time : (Fraction?)null;
            var nextTick = next is null ? long.MaxValue : times[i + 1].Kept[0].Start;
            cut += top.End > nextTick ? 1 : 0;
            var with = kept.Skip(1).Select(sound => (int)sound.Key).ToImmutableArray();
            notes.Add(new MidiNote(top.Key, with, time, EndOf(top, time, next, nextTick)));
        }

        Notes = notes.MoveToImmutable();
        if (cut > 0)
        {
            _findings.Warn(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{cut} notes sound on into the next one; they end where it begins"
                )
            );
        }
    }

    private Fraction Settled(long tick)
    {
        var time = _grid.OnsetAt(tick);
        var off = _grid.TicksBetween(tick, time);
        _largest = Math.Max(_largest, off);
        _sum += off;
        _onsets++;
        return time;
    }

    // Of the notes that begin together the highest, the longest of equals first, and those that the hand can add to it.
    private ImmutableArray<MidiSound> KeptOf(List<MidiSound> sounds, Fraction time)
    {
        var ordered = sounds.OrderByDescending(sound => (sound.Key, sound.End)).ToList();
        var different = ordered
            .DistinctBy(sound => sound.Key)
            .Select(sound => ordered.IndexOf(sound))
            .ToList();
        var kept = _reading.TopNotesOnly
            ? [0]
            : ChordReach
                .Keep(
                    different.ConvertAll(number => new ReachedTone(ordered[number].Key, null)),
                    _reading.Instrument
                )
                .Select(number => different[number])
                .ToImmutableArray();
        var where = new Lazy<string>(() => _frame.PlaceOf(time));
        for (var i = 0; i < ordered.Count; i++)
        {
            if (!kept.Contains(i))
            {
                _findings.LeaveOut(ordered[i].Key, where);
            }
        }

        return [.. kept.Select(number => ordered[number])];
    }

    private Fraction EndOf(MidiSound sound, Fraction onset, Fraction? next, long nextTick)
    {
        var gap = nextTick - sound.End;
        var isFilled = _frame.Remark is null && gap < (nextTick - sound.Start) / ShareOfGap;
        if (next is { } follower && (gap <= 0 || isFilled))
        {
            return follower;
        }

        var end = _grid.EndAt(sound.End, sound.Start);
        var least = onset + (_frame.Meter.Beat / Fraction.Of(ShortestPart));
        var longEnough = end > onset ? end : least;
        return next is { } limit && longEnough > limit ? limit : longEnough;
    }
}
