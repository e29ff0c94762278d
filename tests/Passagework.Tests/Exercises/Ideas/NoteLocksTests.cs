using Passagework.Exercises;
using Passagework.Exercises.Ideas;
using Passagework.Foundation;
using Passagework.Hands;
using Lock = Passagework.Exercises.Lock;

namespace Passagework.Tests.Exercises.Ideas;

public class NoteLocksTests
{
    private static readonly Recipe Fives = Library.Find("groups-of-five-up").OrThrow().Recipe;

    [Fact]
    public void Parts_of_a_lock_are_joined_and_the_last_one_said_holds()
    {
        var locked = NoteLocks
            .Set(Fives, new Lock(5, Finger: 4))
            .Then(one => NoteLocks.Set(one, new Lock(5, Stroke: Stroke.Up)))
            .Then(two => NoteLocks.Set(two, new Lock(5, Finger: 3)))
            .Then(three => NoteLocks.Set(three, new Lock(1, Finger: 3)))
            .OrThrow();

        Assert.Equal(
            [new Lock(1, Finger: 3), new Lock(5, Finger: 3, Stroke: Stroke.Up)],
            locked.Fretting.Locks
        );
        Assert.Equal([new Lock(1, Finger: 3)], NoteLocks.Clear(locked, 5).Fretting.Locks);
        Assert.Equal(Fives, NoteLocks.ClearAll(locked));
    }

    [Fact]
    public void What_is_locked_is_played()
    {
        var locked = NoteLocks.Set(Fives, new Lock(1, Finger: 3, Stroke: Stroke.Down)).OrThrow();

        var note = Measurer.Measure(locked, Player.At(2)).OrThrow().Realization.Notes[1];

        Assert.Equal((3, Stroke.Down), (note.Finger, note.Stroke));
    }

    [Fact]
    public void A_written_line_is_locked_alike()
    {
        var written = RecipeJson
            .Read(
                """
                { "passagework": 1, "written": [
                  { "place": "2:5", "duration": "1/4" }, { "place": "2:7", "duration": "1/4" } ] }
                """
            )
            .OrThrow();

        var note = NoteLocks
            .Set(written, new Lock(1, String: 3))
            .Then(locked => Measurer.Measure(locked, Player.At(2)))
            .OrThrow()
            .Realization.Notes[1];

        // F sharp on string 2 at fret 7 lies on string 3 at fret 11.
        Assert.Equal("3:11", $"{note.Place}");
    }

    [Theory]
    [InlineData(40, 1, "there is no note 40 to lock")]
    [InlineData(1, 5, "0 to 4")]
    public void A_note_or_finger_that_there_is_not_is_refused(int note, int finger, string reason)
    {
        var refused = Assert.IsType<Outcome<Recipe>.Refused>(
            NoteLocks.Set(Fives, new Lock(note, Finger: finger))
        );

        Assert.Contains(reason, $"{refused.Fault}", StringComparison.Ordinal);
    }

    [Fact]
    public void Locks_are_listed_and_freed_one_by_one_at_their_control()
    {
        var locked = NoteLocks.Set(Fives, new Lock(7, Finger: 3, Stroke: Stroke.Up)).OrThrow();
        var axis = RandomIdeas.AxesOf(locked).Single(one => one.Key == "fretting.locks");

        Assert.Equal("one note locked", axis.Value);
        Assert.Equal("free note 8: finger 3, up-stroke", axis.Choices[^1].Words);
        Assert.Equal(Fives, IdeaChange.Set(locked, axis.Key, axis.Choices[^1].Key).OrThrow());
        Assert.Equal(Fives, IdeaChange.Set(locked, axis.Key, "none").OrThrow());
    }
}
