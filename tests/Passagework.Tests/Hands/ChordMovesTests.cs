using System.Collections.Immutable;
using CsCheck;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Instrument;

namespace Passagework.Tests.Hands;

/// <summary>
/// Changes to chords and from them, worked by hand from the rules at level 2: A 135, lift 120, C 240, R 215, (1 - 0.30) x 42
/// a bit across, shift (1 - 0.30)(62.5 + 40 a bit), fingers 1 1.05 1.12 1.18; strings 7.877 mm apart at fret 5 and 8.164 mm
/// at fret 7.
/// </summary>
public class ChordMovesTests
{
    private static readonly Player Middle = Player.At(2);
    private static readonly Geometry Guitar = Geometry.Of(Fretboard.Standard);
    private static readonly FrettingMoves Single = new(Guitar, handSize: 1);
    private static readonly ChordMoves Chords = new(Single, Middle.Parameters.Basis);

    [Theory]
    [InlineData(
        "one finger stays, the other: 135 x 1.12 + 29.4 log2(8.164/4.5 + 1)",
        "5 4:5=1",
        "5 3:7=3 4:5=1",
        195.09
    )]
    [InlineData(
        "from an open string, the longer whole, the other 0.7/2: 230.22 + 0.35 x 223.21",
        "5 6:0=0",
        "5 2:5=1 3:7=3",
        308.34
    )]
    [InlineData("both slide along their strings: the shift alone", "5 2:5=1 3:7=3", "7 2:7=1 3:9=3", 109.71)]
    [InlineData("laid flat over one more string: R/2", "5 1:5=1", "5 1:5=1 2:5=1", 107.5)]
    [InlineData("one finger leaves for the open string: 120 x 1.12", "5 2:5=1 3:7=3", "5 2:5=1 3:0=0", 134.4)]
    [InlineData("nothing changes", "5 2:5=1 3:7=3", "5 2:5=1 3:7=3", 0)]
    [InlineData("all fingers leave: 120 x 1.12 + 0.35 x 120", "5 2:5=1 3:7=3", "5 2:0=0 3:0=0", 176.4)]
    public void Change_takes_the_worked_time(string why, string from, string to, double expected)
    {
        var demand = Chords.Between(StateOf(from), StateOf(to), Reach.Struck);

        Assert.Equal((why, expected), (why, Math.Round(demand!.Value.At(Middle.Parameters.Basis), 2)));
    }

    [Fact]
    public void Nothing_fretted_leaves_the_hand_where_it_is() =>
        Assert.Null(Chords.Between(StateOf("5 2:5=1 3:7=3"), StateOf("7 2:0=0 3:0=0"), Reach.Struck));

    [Fact]
    public void Slur_from_a_chord_is_a_move_on_its_string() =>
        Assert.Equal(
            Single.Between(StateOf("5 3:5=1"), StateOf("5 3:7=3"), Reach.Slurred),
            Chords.Between(StateOf("5 2:5=1 3:5=1"), StateOf("5 3:7=3"), Reach.Slurred)
        );

    // Two single notes, taken as chords of one tone, cost what they cost as notes; but a guided finger here only shifts.
    [Fact]
    public void Chord_of_one_tone_moves_as_a_note() =>
        Gen.Select(AnyState, AnyState)
            .Where((from, to) => !(from.Place.String == to.Place.String && from.Finger == to.Finger))
            .Sample(
                (from, to) =>
                {
                    var asNote = Single.Between(from, to, Reach.Struck);
                    var asChord = Chords.Between(from, to, Reach.Struck);
                    Assert.Equal(
                        asNote?.At(Middle.Parameters.Basis) ?? -1,
                        asChord?.At(Middle.Parameters.Basis) ?? -1,
                        9
                    );
                },
                iter: 20_000
            );

    private static readonly Gen<FretState> AnyState = Gen.Select(
        Gen.Int[1, 6],
        Gen.Int[0, 12],
        Gen.Int[1, 4],
        Gen.Int[-1, 1],
        (number, fret, finger, deviation) =>
            fret == 0
                ? new FretState(Place.At(number, 0), 0, finger)
                : new FretState(
                    Place.At(number, fret),
                    finger,
                    Math.Max(1, fret - (finger - 1) - Math.Min(deviation, finger == 1 ? 0 : 1))
                )
    );

    // Position, then tones as place=finger, from high to low.
    private static FretState StateOf(string text)
    {
        var words = text.Split(' ');
        var tones = words
            .Skip(1)
            .Select(word => word.Split('='))
            .Select(parts => new FingeredTone(
                Lines.PlaceOf(parts[0]),
                int.Parse(parts[1], System.Globalization.CultureInfo.InvariantCulture)
            ))
            .ToImmutableArray();
        var position = int.Parse(words[0], System.Globalization.CultureInfo.InvariantCulture);
        return new FretState(tones[0].Place, tones[0].Finger, position)
        {
            Form = tones.Length > 1 ? new FretForm(tones, new HandSpan(Guitar, 1)) : null,
        };
    }
}
