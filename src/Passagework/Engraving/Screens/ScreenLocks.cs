using Passagework.Engraving.Drawing;
using Passagework.Engraving.Fonts;
using Passagework.Engraving.Scores;
using Passagework.Exercises;

namespace Passagework.Engraving.Screens;

/// <summary>Draws a plain frame round what the teacher has set: finger, stroke, string or position.</summary>
/// <param name="recipe">Says what is locked.</param>
/// <param name="spaceMm">One staff space.</param>
internal sealed class ScreenLocks(Recipe recipe, double spaceMm)
{
    private const double Air = 0.25;
    private const double Pen = 0.12;

    /// <summary>The frames of a system; what is not written there has none.</summary>
    public IEnumerable<Mark> Draw(ScoreSystem system)
    {
        foreach (var held in recipe.Fretting.Locks)
        {
            foreach (var kind in Kinds(held).Distinct())
            {
                // Of a chord the highest tone, which is the note itself, is written last.
                if (
                    system.Marks.LastOrDefault(mark => mark.Note == held.Note && mark.Kind == kind) is
                    { } mark
                )
                {
                    yield return Frame(mark);
                }
            }
        }
    }

    private static IEnumerable<string> Kinds(Exercises.Lock held)
    {
        if (held.Finger is not null)
            yield return "finger";
        if (held.String is not null || held.Position is not null)
            yield return "tab-number";
        if (held.Stroke is { } stroke)
            yield return stroke is Stroke.Down or Stroke.Up ? "stroke" : "pluck";
    }

    private PolygonMark Frame(Mark mark)
    {
        var box = MarkBox.Of(mark).Grown(Air * spaceMm);
        return new PolygonMark([
            new(box.Left, box.Top),
            new(box.Right, box.Top),
            new(box.Right, box.Bottom),
            new(box.Left, box.Bottom),
        ])
        {
            Id = mark.Id + "-lock",
            Kind = "lock",
            Note = mark.Note,
            Filling = Filling.None,
            OutlineMm = Pen * spaceMm,
        };
    }
}
