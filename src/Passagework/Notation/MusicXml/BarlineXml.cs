using System.Globalization;

namespace Passagework.Notation;

/// <summary>Bar lines that say more than where a bar ends: repeats, endings, the end.</summary>
internal sealed class BarlineXml(XmlPage page, MusicXmlWriting options, int bars)
{
    /// <summary>Repeats and endings that lie in the music, or what is wrong with the first that does not.</summary>
    public Foundation.Fault? Check() =>
        options
            .Repeats.Select(repeat => (repeat.First, repeat.Last, What: "repeat"))
            .Concat(options.Endings.Select(ending => (ending.First, ending.Last, What: "ending")))
            .Where(part => part.First < 1 || part.Last > bars || part.First > part.Last)
            .Select(part => new Foundation.Fault(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"a {part.What} from bar {part.First} to bar {part.Last}"
                ),
                Right: string.Create(CultureInfo.InvariantCulture, $"bars from 1 to {bars}, in order")
            ))
            .FirstOrDefault();

    /// <summary>Writes the left bar line of a bar, if it says anything.</summary>
    public void WriteLeft(int bar)
    {
        var ending = options.Endings.FirstOrDefault(ending => ending.First == bar);
        var repeats = options.Repeats.Any(repeat => repeat.First == bar);
        if (ending is null && !repeats)
        {
            return;
        }

        page.Open("barline", "location", "left");
        if (ending is not null)
        {
            page.Text("ending", ending.Text, "number", Turns(ending), "type", "start");
        }

        if (repeats)
        {
            page.Mark("repeat", "direction", "forward");
        }

        page.Close();
    }

    /// <summary>Writes the right bar line of a bar, if it says anything.</summary>
    public void WriteRight(int bar)
    {
        var ending = options.Endings.FirstOrDefault(ending => ending.Last == bar);
        var repeats = options.Repeats.Any(repeat => repeat.Last == bar) || EndsTurn(bar);
        if (ending is null && !repeats && bar < bars)
        {
            return;
        }

        page.Open("barline", "location", "right");
        if (repeats || bar == bars)
        {
            page.Text("bar-style", "light-heavy");
        }

        if (ending is not null)
        {
            page.Mark("ending", "number", Turns(ending), "type", repeats ? "stop" : "discontinue");
        }

        if (repeats)
        {
            page.Mark("repeat", "direction", "backward");
        }

        page.Close();
    }

    // An ending that another one follows goes back to the beginning of the repeat.
    private bool EndsTurn(int bar) =>
        options.Endings.Any(ending => ending.Last == bar)
        && options.Endings.Any(ending => ending.First == bar + 1);

    // The numbers in the text; the format allows a blank where there are none.
    private static string Turns(ScoreEnding ending)
    {
        var numbers = ending
            .Text.Split([' ', ',', '.'], StringSplitOptions.RemoveEmptyEntries)
            .Where(word => word.All(char.IsAsciiDigit) && word[0] != '0');
        var turns = string.Join(", ", numbers);
        return turns.Length > 0 ? turns : " ";
    }
}
