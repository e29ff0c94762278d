using CsCheck;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Hands.Explaining;
using Passagework.Tests.Architecture;
using Passagework.Tests.Exercises.Ideas;

namespace Passagework.Tests.Hands.Explaining;

public class MoveExplanationTests
{
    private static readonly GoldenFile Golden = new(
        "tests",
        "Passagework.Tests",
        "Hands",
        "Explaining",
        "Golden"
    );

    [Fact]
    public void A_skip_is_told_as_from_place_to_place_with_fingers_and_the_time_there_is()
    {
        var measured = Measured("groups-of-five-up");

        var move = MoveExplanation.Of(measured, 5, 60);

        Assert.Equal(
            "4:5 to 6:8, first to little finger over a skipped string: ",
            move.Fretting.Lead + move.Fretting.How
        );
        Assert.Equal($"{measured.Demands[5].FrettingMs:0} ms", move.Fretting.Figure);
        Assert.Equal(" of the 250 ms that 60 beats a minute allow.", move.Fretting.Rest);
        Assert.Equal(
            "The pick goes from a down-stroke to an up-stroke across the same string, inside: ",
            move.Picking.How
        );
    }

    [Fact]
    public void Times_are_those_of_the_measurement_and_of_what_they_rest_on() =>
        RandomIdeas.All.Sample(
            recipe =>
                !Measurer.Measure(recipe, Player.At(2)).TryGet(out var measured, out _)
                || Enumerable
                    .Range(1, Math.Min(40, measured.Demands.Length - 1))
                    .All(note => IsMeasured(measured, note)),
            iter: 200
        );

    [Fact]
    public void Moves_of_the_library_are_told_as_they_were_read_by_an_eye() =>
        Golden.Holds(
            "library-moves.txt",
            string.Concat(
                Library
                    .Families.Select(family => Library.OfFamily(family)[0].Id)
                    .SelectMany(id => Told(Measured(id)))
                    .DistinctBy(line =>
                        string.Join(' ', line.Split(' ').Where(word => !word.Any(char.IsDigit)))
                    )
            )
        );

    [Theory]
    [InlineData(-1, 60)]
    [InlineData(40, 60)]
    [InlineData(5, 0)]
    public void Notes_and_tempi_that_are_none_are_refused(int note, double bpm) =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            MoveExplanation.Of(Measured("groups-of-five-up"), note, bpm)
        );

    internal static Measurement Measured(string id, double level = 2) =>
        Measurer.Measure(Library.Find(id).OrThrow().Recipe, Player.At(level)).OrThrow();

    private static IEnumerable<string> Told(Measurement measured) =>
        Enumerable
            .Range(0, measured.Demands.Length)
            .Select(note =>
                string.Concat(
                    MoveExplanation.Of(measured, note, 60).Sentences.Select(part => part.Text + " ")
                ) + "\n"
            );

    private static bool IsMeasured(Measurement measured, int note)
    {
        var (move, demand) = (MoveExplanation.Of(measured, note, 90), measured.Demands[note]);
        return Says(move.Fretting, demand.FrettingMs)
            && Says(move.Picking, demand.PickingMs)
            && Says(move.Together, demand.TogetherMs)
            && Math.Abs(move.FrettingUses.Sum(use => use.Ms) - (demand.FrettingMs ?? 0)) < 1e-6
            && Math.Abs(move.PickingUses.Sum(use => use.Ms) - (demand.PickingMs ?? 0)) < 1e-6
            && move.Sentences.All(part => part.Text.EndsWith('.'));
    }

    private static bool Says(MoveSentence sentence, double? ms) =>
        sentence.Figure == (ms is > 0 ? FormattableString.Invariant($"{ms:0} ms") : "");
}
