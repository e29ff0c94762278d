using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;

namespace Passagework.Tests.Hands;

public class TopTempoTests
{
    // By hand: 4.97 notes a second, four to the beat, are 74.55 beats a minute; 4.06 and 5.34 are 60.9 and 80.1.
    [Fact]
    public void Notes_a_second_become_beats_a_minute()
    {
        var range = new CeilingRange(4.06, 5.34, 0.63, 0.28, 0.09, []);
        var top = TopTempo.Of(new Ceiling(4.97, 5.28, 6.33, range), notesPerBeat: 4);

        Assert.Equal(74.55, top!.Value.Bpm, 9);
        Assert.Equal("75", top.Value.Plain);
        Assert.Equal("61–80", top.Value.Span);
    }

    [Fact]
    public void A_span_that_rounds_to_one_figure_is_one_figure() =>
        Assert.Equal("60", new TopTempo(60.1, 59.8, 60.2).Span);

    [Fact]
    public void Where_no_hand_is_asked_anything_there_is_none() =>
        Assert.Null(TopTempo.Of(new Ceiling(null, null, null, null), notesPerBeat: 4));

    [Fact]
    public void A_measured_exercise_has_that_of_its_ceiling()
    {
        var measured = Measurer
            .Measure(Library.Find("groups-of-three-up").OrThrow().Recipe, Player.At(2))
            .OrThrow();

        Assert.Equal(60 * measured.Ceiling.Range!.Low / 3, measured.Top?.Low);
        Assert.Equal(measured.Bpm, measured.Top?.Bpm);
    }
}
