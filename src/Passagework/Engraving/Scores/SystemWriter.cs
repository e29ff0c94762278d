using System.Collections.Immutable;
using Passagework.Engraving.Drawing;

namespace Passagework.Engraving.Scores;

/// <summary>Draws one system: the notes, what stands near them, the rows; then sets staff over tab and shuts it with bar lines.</summary>
internal static class SystemWriter
{
    // From the last staff line to the first tab line at least; between their marks at least.
    private const double StaffToTab = 6;
    private const double MarksApart = 0.7;

    /// <summary>Draws a planned system.</summary>
    public static ScoreSystem Write(SystemPlan plan, ScorePiece piece)
    {
        var scene = SceneOf(plan, piece);
        WriteStaves(scene);
        WriteMarks(scene);
        var tabTop = TabTop(scene);
        new BarLineWriter(scene, tabTop + scene.Bottom.Height).Write();
        var system = Assemble(scene, tabTop);
        scene.Staff?.Release();
        scene.Tab?.Release();
        return system;
    }

    private static Scene SceneOf(SystemPlan plan, ScorePiece piece)
    {
        var layout = piece.Options.Layout;
        var (width, space) = (piece.Options.WidthMm / piece.Sizes.SpaceMm, piece.Sizes.SpaceMm);
        var staff = layout is ScoreLayout.StaffAndTab or ScoreLayout.Staff
            ? new Block(width, StaffPlace.Height, space)
            : null;
        var tab = layout is ScoreLayout.Staff ? null : new Block(width, piece.Sizes.TabHeight, space);
        return new Scene(plan, piece, staff, tab);
    }

    private static void WriteStaves(Scene scene)
    {
        if (scene.Staff is { } staff)
        {
            new StaffWriter(scene, staff).Write();
            new StemWriter(scene, staff).Write();
            new BendWriter(scene).WriteStaff(staff);
        }

        if (scene.Tab is { } tab)
        {
            new TabWriter(scene, tab).Write();
            if (scene.Piece.Options.Layout == ScoreLayout.TabWithRhythm)
            {
                new RhythmWriter(scene, tab).Write();
            }
        }
    }

    // The order is the order outward from the notes.
    private static void WriteMarks(Scene scene)
    {
        var near = new NearMarks(scene);
        var below = new RowsBelow(scene);
        near.WriteStaccato();
        if (scene.Staff is { } staff)
        {
            var curves = new CurveWriter(scene, staff);
            curves.WriteTies();
            curves.WriteSlides();
            curves.WriteSlurs();
        }

        near.WriteAccents();
        near.WritePlucks();
        if (scene.Piece.Options.Layout != ScoreLayout.Tab)
        {
            new TupletWriter(scene).Write();
        }

        new BendWriter(scene).WriteFigures();
        new VibratoWriter(scene).Write();
        below.WriteSound();
        new RowsAbove(scene).Write();
        new TempoWriter(scene).Write();
        below.WriteStringNumbers();
        below.WriteFingers();
        below.WriteCounts();
    }

    private static double TabTop(Scene scene) =>
        scene is { Staff: { } staff, Tab: { } tab }
            ? Math.Max(StaffPlace.Height + StaffToTab, staff.Below.Against(tab.Above) + MarksApart)
            : 0;

    private static ScoreSystem Assemble(Scene scene, double tabTop)
    {
        var space = scene.Piece.Sizes.SpaceMm;
        // Half a line's thickness over the top line and under the last.
        var half = Pens.StaffLine / 2;
        var top = Math.Max(half, scene.Top.Above.Highest());
        var bottom = Math.Max(
            tabTop + Math.Max(scene.Bottom.Height + half, scene.Bottom.Below.Highest()),
            scene.Top.Below.Highest()
        );
        var marks = scene.Top.Marks.Select(mark => mark.Moved(0, top * space));
        if (scene.Staff is not null && scene.Tab is { } tab)
        {
            marks = marks.Concat(tab.Marks.Select(mark => mark.Moved(0, (top + tabTop) * space)));
        }

        StaffBand? Band(Block? block, double from) =>
            block is null ? null : new StaffBand((top + from) * space, (top + from + block.Height) * space);
        return new ScoreSystem
        {
            Number = scene.Plan.Index + 1,
            FirstBar = scene.Piece.Written.NumberOf(scene.Plan.Bars[0].Bar),
            LastBar = scene.Piece.Written.NumberOf(scene.Plan.Bars[^1].Bar),
            Marks = [.. marks],
            Columns = [.. scene.Plan.Columns.Select(column => ColumnOf(column, space))],
            WidthMm = scene.Piece.Options.WidthMm,
            HeightMm = (top + bottom) * space,
            MusicStartMm = scene.Plan.Prefix.Width * space,
            MusicEndMm = scene.Plan.EndX * space,
            Staff = Band(scene.Staff, 0),
            Tab = Band(scene.Tab, tabTop),
        };
    }

    private static ScoreColumn ColumnOf(Column column, double space) =>
        new(
            column.Written.Onset,
            column.Written.Length,
            column.X * space,
            [
                .. column.Heads.Select(head => new ScoreHead(
                    column.Note ?? 0,
                    head.Tone.Place,
                    column.Written.TiedBack
                )),
            ]
        );
}
