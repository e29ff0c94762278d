using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Notation;
using Passagework.Rhythm;

namespace Passagework.Tests.Notation;

/// <summary>Beams of whole bars: <c>(</c> begins, <c>-</c> runs on, <c>)</c> ends, <c>&gt;</c> and <c>&lt;</c> are hooks, <c>.</c> no beam; one word a level.</summary>
public sealed class BeamMarksTests
{
    // The table of beaming by metre is common practice as taught; secondary beams in dotted beats go 2+2+2.
    [Theory]
    [InlineData("2/4", "1/8", "()()")]
    [InlineData("3/4", "1/8", "()()()")]
    [InlineData("4/4", "1/8", "()()()()")]
    [InlineData("2/4", "1/16", "(--)(--) (--)(--)")]
    [InlineData("4/4", "1/16", "(--)(--)(--)(--) (--)(--)(--)(--)")]
    [InlineData("6/8", "1/8", "(-)(-)")]
    [InlineData("9/8", "1/8", "(-)(-)(-)")]
    [InlineData("12/8", "1/8", "(-)(-)(-)(-)")]
    [InlineData("6/8", "1/16", "(----)(----) ()()()()()()")]
    [InlineData("5/8", "1/8", "()(-)")]
    [InlineData("7/8", "1/8", "()()(-)")]
    [InlineData("7/8", "1/16", "(--)(--)(----) (--)(--)(----)")]
    [InlineData("2/4", "1/32", "(------)(------) (--)(--)(--)(--) (--)(--)(--)(--)")]
    [InlineData("2/4", "3/16 1/16 1/16 3/16", "()() .<>.")]
    [InlineData("6/8", "3/16 1/16 1/8", "(-)(-) .<..<.")]
    [InlineData("2/4", "1/12", "(-)(-)")]
    public void Beams_show_the_metre(string meter, string lengths, string expected)
    {
        Assert.True(Meter.TryParse(meter, out var parsed));
        var recipe = PlayedLines.Plain with { Rhythm = new RhythmPlan { Meter = parsed } };
        var cycle = lengths
            .Split(' ')
            .Select(text => Fraction.TryParse(text, out var length) ? length : default);
        var entries = new List<Entry>();
        for (var time = Fraction.Zero; time < parsed.Bar; time += entries[^1].Length)
        {
            entries.Add(
                new Entry(
                    Passagework.Instrument.Place.At(1, 5),
                    cycle.ElementAt(entries.Count % cycle.Count())
                )
            );
        }

        var bar = ScoreBars.Of(PlayedLines.Of(recipe, entries)).OrThrow()[0];

        Assert.Equal(expected, Text(BeamMarks.Of(bar)));
    }

    private static string Text(
        System.Collections.Immutable.ImmutableArray<System.Collections.Immutable.ImmutableArray<BeamMark>> beams
    )
    {
        var levels = beams.Max(note => note.Length);
        return string.Join(
            ' ',
            Enumerable
                .Range(0, levels)
                .Select(level =>
                    string.Concat(beams.Select(note => level < note.Length ? "(-)><"[(int)note[level]] : '.'))
                )
        );
    }
}
