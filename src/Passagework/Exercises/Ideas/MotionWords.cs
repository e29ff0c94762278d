using Passagework.Foundation;
using Passagework.Instrument;

namespace Passagework.Exercises.Ideas;

/// <summary>How a cell goes through its layout, in words.</summary>
internal sealed class MotionWords(Recipe recipe, WayOfLine way, RoomStyle style)
{
    private readonly Movement _movement = recipe.Movement;
    private readonly LayoutName _layout = LayoutName.Of(recipe, style);
    private readonly bool _isOne = CellFigure.Of(recipe.Cell!.Offsets).Kind == FigureKind.One;

    // Chosen places need not climb, and boxes one after another share pitches: there a line goes on and back.
    private readonly bool _repeatsPitches = recipe.Layout is Layout.Chain or Layout.Joined;
    private readonly bool _climbs = recipe.Layout is not Layout.Given;

    /// <summary>A single note that moves: the layout note by note.</summary>
    public string Straight(string scale) =>
        $"{Every()}{scale}{(Math.Abs(_movement.Step) == 1 ? " note by note" : "")}, {Through()}{Repeated()}";

    /// <summary>What follows the cell: the same from another note, or again where it is.</summary>
    public string Phrase()
    {
        if (_movement.Step == 0)
        {
            return Still();
        }

        if (way.HasOneCell)
        {
            return $", {Through()}{Repeated()}";
        }

        var steps = Math.Abs(_movement.Step);
        var further = _repeatsPitches || !_climbs ? Choose("on", "back") : Choose("higher", "lower");
        return $", then the same from {NumberWords.Of(steps, _climbs ? "note" : "place")} {further}, {Through()}{Repeated()}";
    }

    private string Every() =>
        Math.Abs(_movement.Step) switch
        {
            1 => "",
            2 => "every second note of ",
            3 => "every third note of ",
            var step => $"every {NumberWords.Of(step)}th note of ",
        };

    private string Through()
    {
        var ahead = _climbs ? Choose("up", "down") : Choose("forward", "backward");
        var reach = $"{ahead} through {_layout.Name}{Reach()}";
        if (!way.TurnsBack)
        {
            return reach;
        }

        var how = _isOne ? "" : " in the mirror";
        return $"{reach} and back{(_climbs ? Choose(" down", " up") : "")}{how}{(_movement.Turn == Turn.Shared ? ", the turning note played once" : "")}";
    }

    private string Reach()
    {
        if (!way.ReachesEnd)
        {
            return _isOne || way.HasOneCell ? "" : " as far as whole groups go";
        }

        if (_movement is not { From: null, To: null })
        {
            return "";
        }

        return _climbs
            ? $" to {_layout.Its} {Choose("top", "bottom")}"
            : Choose(" to the last of them", " to the first of them");
    }

    private string Still()
    {
        var times = _movement.Repeat > 1 ? $", {NumberWords.Times(_movement.Repeat)} over" : "";
        if (way.FillsAll || !_climbs)
        {
            return $", {(_climbs ? Choose("up", "down") : "on")} {(_climbs ? "through " : "")}{_layout.Name}{Mirrored()}{times}";
        }

        var where = way.CellRises ? "up from the bottom of" : "down from the top of";
        return $", {where} {_layout.Name}{Mirrored()}{times}";
    }

    private string Mirrored()
    {
        if (!way.TurnsBack)
        {
            return "";
        }

        var other = way.CellRises ? "top" : "bottom";
        return way.FillsAll || !_climbs
            ? ", then in the mirror"
            : $", then in the mirror from {_layout.Its} {other}";
    }

    private string Repeated() =>
        _movement.Repeat > 1 ? $", all of it {NumberWords.Times(_movement.Repeat)}" : "";

    private string Choose(string rising, string falling) => way.LineRises ? rising : falling;
}
