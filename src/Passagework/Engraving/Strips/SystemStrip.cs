using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;
using Passagework.Hands;

namespace Passagework.Engraving.Strips;

/// <summary>The strip under one system, in millimetres of that system.</summary>
internal sealed class SystemStrip
{
    // In staff spaces.
    private const double GapAbove = 2;
    private const double HalfHeight = 4.6;
    private const double SignRoom = SignDrawing.MostHeight + 0.7;
    private const double WidestBar = 1.1;
    private const double BarShare = 0.62;
    private readonly ScoreSystem _system;
    private readonly StripPlan _plan;
    private readonly double _space;
    private readonly double _middle;
    private readonly double _mmPerMs;
    private readonly List<(int Note, double X)> _notes;
    private readonly double _barWidth;
    private readonly List<Mark> _marks = [];

    public SystemStrip(ScoreSystem system, StripPlan plan, double space)
    {
        _system = system;
        _plan = plan;
        _space = space;
        _middle = system.HeightMm + ((GapAbove + SignRoom + HalfHeight) * space);
        _mmPerMs = HalfHeight * space / plan.Scale.Ms;
        _notes =
        [
            .. system
                .Columns.Where(column => column.Heads is [{ TiedBack: false }, ..])
                .Select(column => (column.Heads[0].Note, column.XMm)),
        ];
        _barWidth = WidthOfBars();
    }

    /// <summary>The system with the strip.</summary>
    public ScoreSystem Under()
    {
        DrawAxis();
        DrawHand(new Side(Ink.Fretting, "fretting", -1, _plan.Times.Fretting));
        DrawHand(new Side(Ink.Picking, "picking", 1, _plan.Times.Picking));
        var height = _middle + ((HalfHeight + SignRoom) * _space);
        return _system with { Marks = [.. _system.Marks, .. _marks], HeightMm = height };
    }

    private double WidthOfBars()
    {
        var closest = _notes
            .Zip(_notes.Skip(1), (one, next) => next.X - one.X)
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
        return Math.Min(WidestBar * _space, BarShare * closest);
    }

    private void DrawAxis() =>
        _marks.Add(
            new LineMark(
                new Point(_system.MusicStartMm, _middle),
                new Point(_system.MusicEndMm, _middle),
                0.13 * _space
            )
            {
                Id = $"system-{_system.Number}-strip-axis",
                Kind = "strip-axis",
                Ink = Ink.Main,
            }
        );

    private void DrawHand(Side side)
    {
        foreach (var (note, x) in _notes)
        {
            DrawDemand(side, note, x);
        }

        new StripLimit(_system, _notes, side, _middle, _mmPerMs, HalfHeight * _space, _space).DrawOn(_marks);
        new StripNames(_system, side, _middle, _mmPerMs, HalfHeight * _space, _space).DrawOn(
            _marks,
            SignMiddle(side)
        );
    }

    private double SignMiddle(Side side) =>
        _middle + (side.Direction * (HalfHeight + (SignRoom / 2) + 0.2) * _space);

    private void DrawDemand(Side side, int note, double x)
    {
        var demand = _plan.Demands[note];
        var ms = (side.Ink == Ink.Fretting ? demand.FrettingMs : demand.PickingMs) ?? 0;
        if (ms > 0)
        {
            var bar = new DemandBar(side, note, x, _barWidth, _space);
            var known = side.Ink == Ink.Fretting ? !demand.FrettingIsAssumed : !demand.PickingIsAssumed;
            _marks.AddRange(bar.Draw(_middle, ms * _mmPerMs, side.Limits[note] * _mmPerMs, known));
        }

        var sign = side.Ink == Ink.Fretting ? _plan.Moves[note].Fretting : _plan.Moves[note].Picking;
        if (sign is { } shown)
        {
            var y = SignMiddle(side);
            var drawing = new SignDrawing($"note-{note}-{side.Name}-sign", side.Ink, note, _space);
            _marks.AddRange(drawing.Draw(shown, new Point(x, y)));
        }
    }
}

/// <summary>What the strips of all systems share.</summary>
/// <param name="Demands">What the move to each note asks.</param>
/// <param name="Moves">The signs of the move to each note.</param>
/// <param name="Times">The time there is for it.</param>
/// <param name="Scale">How high that is.</param>
internal sealed record StripPlan(
    ImmutableArray<MoveDemand> Demands,
    ImmutableArray<StripMove> Moves,
    StripTimes Times,
    StripScale Scale
);

/// <summary>One hand's half of a strip.</summary>
/// <param name="Ink">The hand's ink.</param>
/// <param name="Name">The hand's name in the marks' names.</param>
/// <param name="Direction">-1 above the middle line, 1 below.</param>
/// <param name="Limits">The time there is for each note, in ms.</param>
internal sealed record Side(Ink Ink, string Name, int Direction, ImmutableArray<double?> Limits);
