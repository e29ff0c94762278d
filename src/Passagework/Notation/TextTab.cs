using System.Collections.Immutable;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Notation;

/// <summary>Plain-text tab, written and read. The format is described in <c>docs/text-tab.md</c>.</summary>
/// <remarks>
/// What <see cref="Write"/> writes, <see cref="Read"/> reads back with equal strings, frets, order, lengths, slurs,
/// accents, fingers, strokes and groups. Tab from elsewhere is read by its usual habits, with a warning wherever
/// something had to be guessed.
/// </remarks>
public static class TextTab
{
    /// <summary>Largest input, in characters.</summary>
    public const int MostCharacters = 1 << 20;

    /// <summary>Writes what is played as tab, lines ending in a line feed.</summary>
    /// <exception cref="ArgumentException">Notes or rests overlap.</exception>
    public static string Write(Realization realization, TabWriting? options = null)
    {
        var bars = TabBarSplitter.Split(realization.Line, realization.Notes);
        var (rows, systems) = Drawn(bars, realization.Line.Recipe, options ?? new TabWriting());
        return TabHeaderWriter.Write(realization, rows) + systems;
    }

    /// <summary>
    /// Writes some bars of what is played: rows only, without title and signs, each system after an empty line; empty where the line
    /// has no such bars.
    /// </summary>
    /// <param name="realization">What is played.</param>
    /// <param name="first">Number of the first bar, from 1.</param>
    /// <param name="last">Number of the last.</param>
    /// <param name="options">How.</param>
    /// <exception cref="ArgumentException">Notes or rests overlap.</exception>
    public static string WriteBars(Realization realization, long first, long last, TabWriting? options = null)
    {
        var recipe = realization.Line.Recipe;
        ImmutableArray<TabBar> bars =
        [
            .. TabBarSplitter
                .Split(realization.Line, realization.Notes)
                .Where(bar => Number(bar) >= first && Number(bar) <= last),
        ];
        return Drawn(bars, recipe, options ?? new TabWriting()).Systems;

        long Number(TabBar bar) => (bar.Events[0].Onset / recipe.Rhythm.Meter.Bar).Floor() + 1;
    }

    /// <summary>Reads tab as a line written note by note; one note at a time.</summary>
    /// <returns>
    /// The line with its warnings, or the reason why it can't be read: too large, no tab in it, bar lines that don't
    /// line up, bars that don't last what the metre says, characters that are no text.
    /// </returns>
    public static Outcome<TabImport> Read(string text, TabReading? options = null)
    {
        if (text.Length > MostCharacters)
        {
            return new Fault("the text is larger than 1 MB", "", "tab of at most 1,048,576 characters");
        }

        var chosen = options ?? new TabReading();
        var findings = new TabFindings();
        return TabLines
            .Of(text)
            .Then(lines => TabPage.Of(lines, findings))
            .Then(page => TabSystems.Read(page, chosen, findings))
            .Then(piece => TabTimes.Settle(piece, chosen, findings))
            .Then(piece => TabAssembly.Build(piece, chosen, findings));
    }

    private static (TabRows Rows, string Systems) Drawn(
        ImmutableArray<TabBar> bars,
        Recipe recipe,
        TabWriting options
    )
    {
        var cells = TabCells.Of(bars, recipe, options);
        var rows = TabRows.Of(cells, recipe);
        var systems = TabSystemBreaker.Break(cells, options.Width - rows.LabelWidth - 1);
        return (rows, rows.Draw(systems));
    }
}
