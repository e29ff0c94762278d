using System.Collections.Immutable;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Scores;

/// <summary>Stacks systems: one below another in a tall picture, or onto pages.</summary>
public static class ScorePages
{
    // Room between systems in staff spaces (ours): pressed so far on a full page, usual, drawn apart so far to fill a page.
    private const double LeastApart = 1.8;
    private const double Apart = 3.5;
    private const double MostApart = 8;

    /// <summary>One picture as wide as its systems and as high as they need.</summary>
    /// <param name="score">What to stack.</param>
    /// <param name="apartMm">Room between two systems; null for the usual.</param>
    /// <param name="marginMm">Room around all of them.</param>
    public static Page Tall(Score score, double? apartMm = null, double marginMm = 0)
    {
        var apart = apartMm ?? UsualApart(score);
        var height = score.Systems.Sum(system => system.HeightMm) + (apart * (score.Systems.Length - 1));
        return PageOf(
            score.Systems,
            new PaperBox(
                score.Systems[0].WidthMm + (2 * marginMm),
                height + (2 * marginMm),
                marginMm,
                marginMm
            ),
            apart
        );
    }

    /// <summary>
    /// Pages filled with systems at equal distances. The last page keeps the usual distance, and is never left with a
    /// lone system when the page before can give one.
    /// </summary>
    /// <param name="score">What to stack.</param>
    /// <param name="paper">The paper and its margins.</param>
    /// <param name="firstTopMm">Room at the top of the first page, such as for a title.</param>
    public static ImmutableArray<Page> Fill(Score score, PaperBox paper, double firstTopMm = 0)
    {
        var groups = Groups(score, paper, firstTopMm);
        var pages = ImmutableArray.CreateBuilder<Page>(groups.Count);
        for (var i = 0; i < groups.Count; i++)
        {
            var box = i == 0 ? paper with { TopMm = paper.TopMm + firstTopMm } : paper;
            var most = i == groups.Count - 1 ? Apart : MostApart;
            pages.Add(PageOf(groups[i], box, Distance(groups[i], box, most * score.SpaceMm)));
        }

        return pages.MoveToImmutable();
    }

    /// <summary>The usual room between two systems.</summary>
    public static double UsualApart(Score score) => Apart * score.SpaceMm;

    private static List<ImmutableArray<ScoreSystem>> Groups(Score score, PaperBox paper, double firstTopMm)
    {
        var groups = new List<ImmutableArray<ScoreSystem>>();
        var page = ImmutableArray.CreateBuilder<ScoreSystem>();
        var left = paper.RoomMm - firstTopMm;
        foreach (var system in score.Systems)
        {
            var needed = system.HeightMm + (page.Count > 0 ? LeastApart * score.SpaceMm : 0);
            if (page.Count > 0 && needed > left)
            {
                groups.Add(page.DrainToImmutable());
                left = paper.RoomMm;
                needed = system.HeightMm;
            }

            page.Add(system);
            left -= needed;
        }

        groups.Add(page.DrainToImmutable());
        if (groups is [.., { Length: > 2 } before, [var lone]] && Fits([before[^1], lone], paper, score))
        {
            groups[^2] = before[..^1];
            groups[^1] = [before[^1], lone];
        }

        return groups;
    }

    private static bool Fits(ImmutableArray<ScoreSystem> systems, PaperBox paper, Score score) =>
        systems.Sum(system => system.HeightMm) + ((systems.Length - 1) * LeastApart * score.SpaceMm)
        <= paper.RoomMm;

    private static double Distance(ImmutableArray<ScoreSystem> systems, PaperBox box, double most)
    {
        var spare = box.RoomMm - systems.Sum(system => system.HeightMm);
        return systems.Length < 2 ? 0 : Math.Min(spare / (systems.Length - 1), most);
    }

    private static Page PageOf(IReadOnlyList<ScoreSystem> systems, PaperBox box, double apart)
    {
        var marks = ImmutableArray.CreateBuilder<Mark>();
        var y = box.TopMm;
        foreach (var system in systems)
        {
            foreach (var mark in system.Marks)
            {
                marks.Add(mark.Moved(box.LeftMm, y));
            }

            y += system.HeightMm + apart;
        }

        return new Page(box.WidthMm, box.HeightMm, marks.ToImmutable());
    }
}

/// <summary>A sheet of paper and where systems stand on it, in millimetres.</summary>
/// <param name="WidthMm">Width of the paper.</param>
/// <param name="HeightMm">Height of the paper.</param>
/// <param name="LeftMm">Margin at the left.</param>
/// <param name="TopMm">Margin at the top, or where systems begin.</param>
/// <param name="BottomMm">Margin at the foot.</param>
public readonly record struct PaperBox(
    double WidthMm,
    double HeightMm,
    double LeftMm,
    double TopMm,
    double BottomMm = 0
)
{
    /// <summary>Height that systems may fill.</summary>
    public double RoomMm => HeightMm - TopMm - BottomMm;
}
