using System.Text.Json.Nodes;
using Passagework.Choosing;
using Passagework.Choosing.Explaining;

namespace Passagework.Cli.Output;

/// <summary>A ranking for machines.</summary>
internal static class ChoiceJson
{
    public static JsonObject Of(ChoiceAnswer answer, string player, Comparison? why)
    {
        var explanation = Explanation.Of(answer);
        var json = new JsonObject
        {
            ["player"] = player,
            ["method"] = answer.Question.Method.Id,
            ["pieces"] = answer.Question.Pieces.Count,
            ["criteria"] = new JsonArray([
                .. answer.Criteria.Select(JsonNode (_, k) => CriterionOf(answer, k)),
            ]),
            ["ranking"] = new JsonArray([
                .. answer.Ranking.Standings.Select(JsonNode (standing) => Standing(answer, standing)),
            ]),
            ["closeness"] = answer.ClosenessWords,
            ["verdict"] = explanation.Verdict,
            ["reasons"] = Texts(explanation.Reasons),
            ["against"] = explanation.Against,
            ["change"] = explanation.Change,
            ["doubt"] = explanation.Doubt,
            ["flips"] = new JsonArray([.. answer.Flips.Select(JsonNode (flip) => FlipOf(answer, flip))]),
            ["smallestChange"] = SmallestOf(answer),
            ["leftOut"] = new JsonArray([
                .. answer.LeftOut.Select(
                    JsonNode (left) =>
                        new JsonObject { ["exercise"] = left.Id, ["why"] = left.Why.ToString() }
                ),
            ]),
            ["notMeasured"] = Texts(answer.NotMeasured.Select(criterion => criterion.Id)),
        };
        if (why is not null)
        {
            json["why"] = WhyOf(answer, why);
        }

        return json;
    }

    private static JsonObject CriterionOf(ChoiceAnswer answer, int k)
    {
        var criterion = answer.Criteria[k];
        var anchor = answer.AnchorOf(k);
        return new JsonObject
        {
            ["id"] = criterion.Id,
            ["weight"] = Rounded.Figure(answer.Choice.Weights.Shares[k]),
            ["unit"] = criterion.Unit,
            ["restsOn"] = criterion.Basis,
            ["anchors"] = new JsonArray(Rounded.Figure(anchor.Zero), Rounded.Figure(anchor.One)),
        };
    }

    private static JsonObject Standing(ChoiceAnswer answer, Standing standing)
    {
        var a = standing.Candidate;
        var remarks = ExerciseRemarks.Of(answer, a);
        return new JsonObject
        {
            ["exercise"] = answer.Candidates[a].Source.Id,
            ["title"] = answer.Candidates[a].Source.Title,
            ["place"] = standing.Place,
            ["score"] = Rounded.Figure(standing.Score),
            ["acceptability"] = Rounded.Figure(answer.AllWeightings.First[a]),
            ["acceptabilityInOrder"] = Rounded.Figure(answer.OrderedWeightings.First[a]),
            ["firstInDraws"] = Rounded.Figure(answer.OtherDraws.First[a]),
            ["beatenOnEverythingBy"] = answer.Dominators[a] is { } better
                ? answer.Candidates[better].Source.Id
                : null,
            ["missingWeight"] = Rounded.Figure(standing.MissingWeight),
            ["values"] = new JsonArray([.. answer.Criteria.Select(JsonNode (_, k) => ValueOf(answer, a, k))]),
            ["pros"] = Texts(remarks.Pros),
            ["cons"] = Texts(remarks.Cons),
            ["notes"] = Texts(remarks.Notes),
            ["piecesLeftOut"] = Texts(answer.Candidates[a].PiecesLeftOut),
        };
    }

    private static JsonObject ValueOf(ChoiceAnswer answer, int a, int k)
    {
        var figure = answer.Candidates[a].Figures[k];
        var mark = answer.Choice.Table.Candidates[a].Marks[k];
        return new JsonObject
        {
            ["criterion"] = answer.Criteria[k].Id,
            ["raw"] = Rounded.Figure(figure.Raw),
            ["value"] = Rounded.Figure(mark.Value),
            ["error"] = figure.Raw is null ? null : Rounded.Figure(figure.Error),
            ["valueError"] = figure.Raw is null ? null : Rounded.Figure(mark.Error),
            ["missing"] = figure.Raw is null,
            ["sentence"] = FigureSentences.Of(answer, a, k),
        };
    }

    private static JsonObject FlipOf(ChoiceAnswer answer, Flip flip) =>
        new()
        {
            ["criterion"] = answer.Criteria[flip.Criterion].Id,
            ["weight"] = Rounded.Figure(flip.Weight),
            ["winner"] = answer.Candidates[flip.Winner].Source.Id,
        };

    private static JsonObject? SmallestOf(ChoiceAnswer answer)
    {
        if (answer.SmallestChange is not { } change)
        {
            return null;
        }

        var weights = new JsonObject();
        for (var k = 0; k < change.Weights.Length; k++)
        {
            weights[answer.Criteria[k].Id] = Rounded.Figure(change.Weights[k]);
        }

        return new JsonObject
        {
            ["rival"] = answer.Candidates[change.Rival].Source.Id,
            ["length"] = Rounded.Figure(change.Length),
            ["weights"] = weights,
        };
    }

    private static JsonObject WhyOf(ChoiceAnswer answer, Comparison why)
    {
        var terms = new JsonArray();
        for (var k = 0; k < why.Terms.Length; k++)
        {
            terms.Add(
                (JsonNode)
                    new JsonObject
                    {
                        ["criterion"] = answer.Criteria[k].Id,
                        ["term"] = Rounded.Figure(why.Terms[k]),
                        ["clear"] = why.Clear[k],
                    }
            );
        }

        return new JsonObject
        {
            ["first"] = answer.Candidates[why.First].Source.Id,
            ["second"] = answer.Candidates[why.Second].Source.Id,
            ["terms"] = terms,
            ["shareOfWeightings"] = Rounded.Figure(why.ShareOfWeightings),
            ["reasons"] = Texts(why.Reasons),
            ["against"] = why.Against,
        };
    }

    private static JsonArray Texts(IEnumerable<string> texts) =>
        new([.. texts.Select(JsonNode (text) => JsonValue.Create(text))]);
}
