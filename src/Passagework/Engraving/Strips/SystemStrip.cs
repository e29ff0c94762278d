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
    private const double SignRoom = SignDrawing.MostHeight + 0.7;
    private const double BarShare = 0.62;
    private readonly ScoreSystem _system;
    private readonly StripPlan _plan;
    private readonly StripLook _look;
    private readonly double _space;
    private readonly List<(int Note, double X)> _notes;
    private readonly double _barWidth;
    private readonly (Side Side, StripNames Names) _fretting;
    private readonly (Side Side, StripNames Names) _picking;
    private readonly StripFrame _frame;
    private readonly List<Mark> _marks = [];

    public SystemStrip(ScoreSystem system, StripPlan plan, double space, StripLook look)
    {
        _system = system;
        _plan = plan;
        _look = look;
        _space = space;
        _notes =
        [
            .. system
                .Columns.Where(column => column.Heads is [{ TiedBack: false }, ..])
                .Select(column => (column.Heads[0].Note, column.XMm)),
        ];
        _barWidth = WidthOfBars();
        _fretting = Named(new Side(Ink.Fretting, "fretting", -1, plan.Times.Fretting));
        _picking = Named(new Side(Ink.Picking, "picking", 1, plan.Times.Picking));
        var half = look.HalfHeight * space;
        var middle = Snapped(
            system.HeightMm + _fretting.Names.RoomBeyond + ((GapAbove + SignRoom) * space) + half
        );
        _frame = new StripFrame(middle, half, half / plan.Scale.Ms, space);
    }

    /// <summary>The system with the strip.</summary>
    public ScoreSystem Under()
    {
        DrawAxis();
        DrawHand(_fretting);
        DrawHand(_picking);
        var height = _frame.Middle + _frame.Half + (SignRoom * _space) + _picking.Names.RoomBeyond;
        return _system with
        {
            Marks = [.. _system.Marks, .. _marks],
            HeightMm = height,
            Strip = new StripBand(_frame.Middle - _frame.Half, _frame.Middle, _frame.Middle + _frame.Half)
            {
                FrettingSignsMm = SignMiddle(_fretting.Side),
                PickingSignsMm = SignMiddle(_picking.Side),
            },
        };
    }

    private (Side Side, StripNames Names) Named(Side side)
    {
        var signs = _notes.Where(note => SignOf(side, note.Note) is not null).Select(note => note.X);
        return (side, new StripNames(_system, side, (_space, _look), signs));
    }

    private double WidthOfBars()
    {
        var closest = _notes
            .Zip(_notes.Skip(1), (one, next) => next.X - one.X)
            .DefaultIfEmpty(double.PositiveInfinity)
            .Min();
        // An even number of dots, so that both edges fall on whole ones.
        return Snapped(Math.Min(_look.WidestBar * _space, BarShare * closest) / 2) * 2;
    }

    private double Snapped(double mm) =>
        _look.GridMm > 0 ? Math.Max(Math.Round(mm / _look.GridMm), 1) * _look.GridMm : mm;

    private void DrawAxis() =>
        _marks.Add(
            new LineMark(
                new Point(_system.MusicStartMm, _frame.Middle),
                new Point(_system.MusicEndMm, _frame.Middle),
                0.13 * _space
            )
            {
                Id = $"system-{_system.Number}-strip-axis",
                Kind = "strip-axis",
                Ink = Ink.Main,
            }
        );

    private void DrawHand((Side Side, StripNames Names) hand)
    {
        foreach (var (note, x) in _notes)
        {
            DrawDemand(hand.Side, note, x);
        }

        new StripLimit(_system, _notes, hand.Side, _frame).DrawOn(_marks);
        var (middle, half) = (SignMiddle(hand.Side), SignDrawing.MostHeight * _space / 2);
        _marks.AddRange(hand.Names.Draw(_frame, (middle - half, middle + half)));
    }

    private double SignMiddle(Side side) =>
        _frame.Middle + (side.Direction * (_frame.Half + (((SignRoom / 2) + 0.2) * _space)));

    private MoveSign? SignOf(Side side, int note) =>
        side.Ink == Ink.Fretting ? _plan.Moves[note].Fretting : _plan.Moves[note].Picking;

    private void DrawDemand(Side side, int note, double x)
    {
        var demand = _plan.Demands[note];
        var ms = (side.Ink == Ink.Fretting ? demand.FrettingMs : demand.PickingMs) ?? 0;
        if (ms > 0)
        {
            var bar = new DemandBar(side, note, x, _barWidth, _space);
            var known = side.Ink == Ink.Fretting ? !demand.FrettingIsAssumed : !demand.PickingIsAssumed;
            _marks.AddRange(
                bar.Draw(
                    _frame.Middle,
                    Snapped(ms * _frame.MmPerMs),
                    side.Limits[note] * _frame.MmPerMs,
                    known
                )
            );
        }

        if (_look.Signs && SignOf(side, note) is { } shown)
        {
            var drawing = new SignDrawing($"note-{note}-{side.Name}-sign", side.Ink, note, _space);
            _marks.AddRange(drawing.Draw(shown, new Point(x, SignMiddle(side))));
        }
    }
}

/// <summary>One hand's half of a strip.</summary>
/// <param name="Ink">The hand's ink.</param>
/// <param name="Name">The hand's name in the marks' names.</param>
/// <param name="Direction">-1 above the middle line, 1 below.</param>
/// <param name="Limits">The time there is for each note, in ms.</param>
internal sealed record Side(Ink Ink, string Name, int Direction, ImmutableArray<double?> Limits);
