using System.Collections.Immutable;
using Passagework.Choosing;
using Passagework.Choosing.Explaining;
using Passagework.Choosing.Measures;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Repertoire;

namespace Passagework.Tests.Choosing;

public sealed class ChooserTests
{
    private static readonly Lazy<PieceCollection> Pieces = new(() =>
        PieceCollection.BuiltIn(Player.At(2), Technique.Alternate).OrThrow()
    );

    private static readonly string[] Three = ["groups-of-five", "groups-of-three", "one-sided-rolls-low"];

    // docs/choosing.md, worked from the definitions by an independent program whose anchors came from a sample: ±0.05.
    [Fact]
    public void Three_families_on_what_needs_no_music()
    {
        var answer = Ask(Three, Weights("even-load", "staying-power", "rhythmic-ambiguity"));

        Assert.Equal(0.651, answer.Choice.Score(0), 0.05);
        Assert.Equal(0.483, answer.Choice.Score(1), 0.05);
        Assert.Equal(0.374, answer.Choice.Score(2), 0.05);
        Assert.Equal(0.98, answer.OtherDraws.First[0], 0.03);
        Assert.False(answer.IsClear(0, 1, 0));
        Assert.True(answer.IsClear(0, 2, 0));
        Assert.True(answer.IsClear(0, 1, 4));
    }

    [Fact]
    public void Coming_out_even_in_place_of_ambiguity_turns_the_answer_round()
    {
        var answer = Ask(Three, Weights("even-load", "staying-power", "comes-out-even"));

        Assert.Equal("groups-of-three", answer.Leader.Source.Id);
        Assert.Equal(0.660, answer.Choice.Score(1), 0.05);
        Assert.Equal(0.552, answer.Choice.Score(2), 0.05);
        Assert.Equal(0.365, answer.Choice.Score(0), 0.05);
    }

    [Fact]
    public void The_order_in_which_exercises_are_named_changes_nothing()
    {
        string[] families = ["groups-of-five", "groups-of-three", "groups-of-six", "pedal", "straight"];
        var forwards = Ask(families, Wishes.Usual);
        var backwards = Ask([.. families.Reverse()], Wishes.Usual);

        Assert.Equal(Order(forwards), Order(backwards));
        Assert.Equal(
            forwards.Ranking.Standings.Select(standing => standing.Score),
            backwards.Ranking.Standings.Select(standing => standing.Score)
        );
    }

    [Fact]
    public void Only_the_proportion_of_weights_counts()
    {
        var small = Ask(Three, Weights(("even-load", 0.1), ("general-use", 0.3)));
        var large = Ask(Three, Weights(("even-load", 10), ("general-use", 30)));

        for (var a = 0; a < Three.Length; a++)
        {
            Assert.Equal(small.Choice.Score(a), large.Choice.Score(a), 1e-12);
        }
    }

    [Fact]
    public void What_is_measured_once_is_ranked_under_other_weights_as_if_asked_anew()
    {
        var question = Question([.. Three.Select(Family)], Wishes.Usual);
        var measured = Chooser.Measure(question).OrThrow();
        foreach (var wishes in new[] { Wishes.Usual, Weights(("comes-out-even", 3), ("even-load", 2)) })
        {
            var again = Chooser.Rank(question with { Wishes = wishes }, measured).OrThrow();
            var anew = Ask(Three, wishes);

            Assert.Equal(Order(anew), Order(again));
            Assert.Equal(anew.Flips, again.Flips);
            Assert.Equal(anew.OrderedWeightings.First, again.OrderedWeightings.First);
        }

        var marked = Wishes.Usual with
        {
            Marks = Wishes.Usual.Marks.Add("fun", ImmutableSortedDictionary<string, double>.Empty),
        };
        Assert.Throws<ArgumentException>(() => Chooser.Rank(question with { Wishes = marked }, measured));
    }

    [Fact]
    public void The_nearest_flip_is_the_one_with_the_least_way()
    {
        var answer = Ask(Three, Wishes.Usual);
        var shares = answer.Choice.Weights.Shares;

        Assert.True(answer.Flips.Length > 1);
        Assert.All(
            answer.Flips,
            flip =>
                Assert.True(
                    Math.Abs(flip.Weight - shares[flip.Criterion])
                        >= Math.Abs(answer.NearestFlip!.Weight - shares[answer.NearestFlip.Criterion])
                )
        );
    }

    [Fact]
    public void A_near_copy_does_not_change_who_leads_nor_its_share()
    {
        var alone = Ask(Three, Wishes.Usual);
        var five = CandidateSource.OfFamily("groups-of-five").OrThrow();
        var copied = Ask(
            [.. Three.Select(Family), five with { Id = "copy", Title = "Copy", Family = "copy" }],
            Wishes.Usual
        );

        Assert.Equal(alone.Leader.Source.Id, copied.Leader.Source.Id);
        Assert.Equal(alone.AllWeightings.First[0], copied.AllWeightings.First[0], 1e-12);
    }

    [Fact]
    public void Forms_of_one_family_share_one_place_and_are_not_each_others_rivals()
    {
        var answer = Ask(
            [Form("groups-of-five-up"), Form("groups-of-five-down"), Form("groups-of-three-up")],
            Weights("even-load", "rhythmic-ambiguity")
        );

        Assert.Equal(answer.AllWeightings.First[0], answer.AllWeightings.First[1]);
        Assert.Equal("groups-of-five", answer.Leader.Source.Family);
        Assert.Equal("groups-of-three-up", answer.RunnerUpCandidate.Source.Id);
    }

    [Fact]
    public void Contributions_add_up_to_the_difference()
    {
        var answer = Ask([.. Library.Families.Take(8)], Wishes.Usual);

        for (var a = 1; a < answer.Candidates.Length; a++)
        {
            var why = Comparison.Of(answer, 0, a);
            Assert.Equal(answer.Choice.Score(0) - answer.Choice.Score(a), why.Terms.Sum(), 1e-12);
        }
    }

    [Fact]
    public void A_criterion_that_nobody_can_be_measured_on_is_set_aside_unless_it_was_asked_for()
    {
        var usual = Ask([Form("straight-up"), Form("straight-down") with { Family = "other" }], Wishes.Usual);

        Assert.Equal(["rhythmic-ambiguity"], usual.NotMeasured.Select(criterion => criterion.Id));
        Assert.Equal(0, usual.Choice.Weights.Shares[4]);
        Assert.False(
            Chooser
                .Choose(
                    Question(
                        [Form("straight-up"), Form("straight-down")],
                        Weights("rhythmic-ambiguity", "even-load")
                    )
                )
                .TryGet(out _, out var fault)
        );
        Assert.Contains("rhythmic-ambiguity", fault.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_no_hand_can_play_is_refused_when_named_and_told_when_not()
    {
        var impossible = Form("groups-of-five-up") with { Id = "impossible" };
        impossible = impossible with
        {
            Forms = [impossible.Forms[0] with { Fretting = new FrettingPlan { Avoid = [1, 2, 3, 4] } }],
        };
        ImmutableArray<CandidateSource> sources = [Family("groups-of-three"), impossible, Family("pedal")];

        Assert.False(Chooser.Choose(Question(sources, Wishes.Usual)).TryGet(out _, out var fault));
        Assert.Contains("impossible", fault.ToString(), StringComparison.Ordinal);
        var answer = Chooser.Choose(Question(sources, Wishes.Usual) with { LeavesOutUnfit = true }).OrThrow();
        Assert.Equal("impossible", Assert.Single(answer.LeftOut).Id);
        Assert.Equal(2, answer.Candidates.Length);
    }

    [Fact]
    public void The_teachers_own_mark_counts_by_exercise_or_family_and_may_be_missing()
    {
        var wishes = WishesJson
            .Read(
                """
                { "passagework": 1, "weights": { "fun": 1, "even-load": 1 },
                  "marks": { "fun": { "groups-of-five": 0.25, "groups-of-three": 1 } } }
                """
            )
            .OrThrow();
        var answer = Ask(Three, wishes);

        Assert.Equal([0.25, 1, null], answer.Candidates.Select(candidate => candidate.Figures[^1].Raw));
        Assert.True(answer.Choice.Table.IsMissing(2, 6));
        Assert.Equal("groups-of-three", answer.Leader.Source.Id);
    }

    [Fact]
    public void The_teachers_anchors_are_kept_to()
    {
        var wishes = WishesJson
            .Read("""{ "passagework": 1, "anchors": { "even-load": [0, 1] } }""")
            .OrThrow();
        var answer = Ask(Three, wishes);

        Assert.Equal(0.8673, answer.Choice.Table.Counted(0, 0), 0.00005);
    }

    [Fact]
    public void One_exercise_is_nothing_to_choose_from()
    {
        Assert.False(Chooser.Choose(Question([Family("pedal")], Wishes.Usual)).TryGet(out _, out var fault));
        Assert.Equal("candidates: only 1 candidate to choose by or from; at least 2", fault.ToString());
    }

    private static string[] Order(ChoiceAnswer answer) =>
        [.. answer.Ranking.Standings.Select(standing => answer.Candidates[standing.Candidate].Source.Id)];

    private static Wishes Weights(params string[] criteria) => Weights([.. criteria.Select(id => (id, 1.0))]);

    private static Wishes Weights(params (string Id, double Weight)[] weights) =>
        new()
        {
            Weights = weights.ToImmutableSortedDictionary(
                weight => weight.Id,
                weight => weight.Weight,
                StringComparer.Ordinal
            ),
        };

    private static CandidateSource Family(string family) => CandidateSource.OfFamily(family).OrThrow();

    private static CandidateSource Form(string id) =>
        CandidateSource.OfForm(id, Library.Find(id).OrThrow().Recipe);

    private static ChoiceQuestion Question(ImmutableArray<CandidateSource> sources, Wishes wishes) =>
        new()
        {
            Player = Player.At(2),
            Candidates = sources,
            Pieces = Pieces.Value,
            Wishes = wishes,
        };

    private static ChoiceAnswer Ask(string[] families, Wishes wishes) =>
        Ask([.. families.Select(Family)], wishes);

    private static ChoiceAnswer Ask(ImmutableArray<CandidateSource> sources, Wishes wishes) =>
        Chooser.Choose(Question(sources, wishes)).OrThrow();
}
