using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Gives ticks their exact written times.</summary>
/// <remarks>
/// Three ways, the first that holds for the whole file: all onsets are multiples of one coarse unit; every beat has a
/// division of up to 32 that hits all its onsets to the tick; else the division that fits each beat best.
/// </remarks>
internal sealed class MidiGrid
{
    private const int TicksPerPart = 8;
    private const int CoarseUnit = 16;
    private const int FinestRemarked = 1_000_000;
    private const double HalfATick = 0.5 + 1e-6;

    private static readonly int[] Fine = [1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 20, 24, 28, 32];

    private readonly MidiFrame _frame;
    private readonly MidiFeel _feel;
    private readonly bool _asWritten;
    private readonly Dictionary<long, int> _divisions = [];
    private readonly bool _isExact;
    private int _parts = 1;

    /// <summary>The grid of a track.</summary>
    /// <param name="frame">Metre and bar lines.</param>
    /// <param name="feel">Swing, which is taken out.</param>
    /// <param name="onsets">Ascending and distinct.</param>
    public MidiGrid(MidiFrame frame, MidiFeel feel, IReadOnlyList<long> onsets)
    {
        _frame = frame;
        _feel = feel;
        _asWritten = frame.Remark is not null;
        _isExact = HaveUnit(onsets);
        if (!_isExact)
        {
            var beats = onsets.GroupBy(tick => BeatOf(Straight(tick))).ToList();
            if (!DivideToTheTick(beats))
            {
                DivideByFit(beats);
            }
        }
    }

    /// <summary>The written time of an onset.</summary>
    public Fraction OnsetAt(long tick)
    {
        var time = Straight(tick);
        return _isExact ? time : Rounded(time, _divisions[BeatOf(time)]);
    }

    /// <summary>The written time of the end of a note that begins at <paramref name="onset"/>.</summary>
    public Fraction EndAt(long tick, long onset)
    {
        var time = Straight(tick);
        if (_isExact && _asWritten)
        {
            return time;
        }

        var exact = _asWritten ? FineHit(parts => Hits(tick, parts)) : 0;
        return Rounded(time, exact > 0 ? exact : MidiBeatFit.DivideFor(PlaceIn(time), PartsAt(onset)));
    }

    /// <summary>How far a tick lies from a written time, in ticks.</summary>
    public double TicksBetween(long tick, Fraction written)
    {
        var ticks = _feel.Played(written, _frame.Meter) * Fraction.Of(4L * _frame.Division);
        return Math.Abs((Fraction.Of(tick - _frame.Origin) - ticks).ToDouble());
    }

    // The division that the onset is known by.
    private int PartsAt(long onset)
    {
        var time = Straight(onset);
        return _isExact ? _parts : _divisions[BeatOf(time)];
    }

    private Fraction Straight(long tick) => _feel.Written(_frame.TimeOf(tick), _frame.Meter);

    private long BeatOf(Fraction time) => (time / _frame.Meter.Beat).Floor();

    private double PlaceIn(Fraction time) => (time.Modulo(_frame.Meter.Beat) / _frame.Meter.Beat).ToDouble();

    private Fraction Rounded(Fraction time, int parts)
    {
        var unit = _frame.Meter.Beat / Fraction.Of(parts);
        return unit * Fraction.Of(((time / unit) + Fraction.Of(1, 2)).Floor());
    }

    private bool Hits(long tick, int parts) =>
        TicksBetween(tick, Rounded(Straight(tick), parts)) <= HalfATick;

    // The first of the fine divisions; 0 for none.
    private static int FineHit(Predicate<int> isHit) => Array.Find(Fine, isHit);

    private bool HaveUnit(IReadOnlyList<long> onsets)
    {
        var finest = _frame.Remark is { IsExact: true } ? FinestRemarked : _frame.Division / CoarseUnit;
        var unit = 1L;
        foreach (var onset in onsets)
        {
            var time = Straight(onset);
            var denominator = (time * Fraction.Of(4)).Denominator;
            unit = denominator > finest ? long.MaxValue : WholeNumbers.Lcm(unit, denominator);
            if (unit > finest)
            {
                return false;
            }

            _parts = (int)WholeNumbers.Lcm(_parts, (time / _frame.Meter.Beat).Denominator);
        }

        return true;
    }

    private bool DivideToTheTick(List<IGrouping<long, long>> beats)
    {
        var finest = _frame.TicksOf(_frame.Meter.Beat) / TicksPerPart;
        foreach (var beat in beats)
        {
            var parts = FineHit(known => known <= finest && beat.All(tick => Hits(tick, known)));
            if (parts == 0)
            {
                _divisions.Clear();
                return false;
            }

            _divisions[beat.Key] = parts;
        }

        return true;
    }

    private void DivideByFit(List<IGrouping<long, long>> beats)
    {
        var places = beats.ConvertAll(beat =>
            (IReadOnlyList<double>)[.. beat.Select(tick => PlaceIn(Straight(tick)))]
        );
        var parts = MidiBeatFit.Divide(places);
        for (var i = 0; i < parts.Length; i++)
        {
            _divisions[beats[i].Key] = parts[i];
        }
    }
}
