using System.Xml.Linq;
using Passagework.Engraving.Screens;

namespace Passagework.Tests.Engraving.Screens;

public sealed class ScreenColumnsTests
{
    [Fact]
    public void A_cursor_finds_every_note_within_two_pixels()
    {
        var drawn = ScreenScore
            .Draw(Played.Measured(Played.Recipe("groups-of-five-up")), new ScreenOptions { WidthPx = 944 })
            .OrThrow();

        foreach (var system in drawn.Systems)
        {
            var columns = XElement
                .Parse(system.Svg)
                .Descendants()
                .Where(element => element.Attribute("data-note") is not null)
                .ToDictionary(element => (int)element.Attribute("data-note")!);

            Assert.NotEmpty(system.Notes);
            foreach (var note in system.Notes)
            {
                var said = (double?)columns[note.Note].Attribute("data-x");
                var x = note.LeftPx + (said ?? ((note.RightPx - note.LeftPx) / 2));
                Assert.Equal(note.XPx, x, 1.6);
            }

            Assert.Contains(columns.Values, column => column.Attribute("data-x") is not null);
        }
    }
}
