using Passagework.Choosing.Measures;
using Passagework.Foundation;

namespace Passagework.Choosing.Explaining;

/// <summary>General use in words: what the exercise's moves and the music's share, both ways.</summary>
internal sealed class GeneralUseVoice : ICriterionVoice
{
    private const double Many = 0.5;
    private const double Some = 0.05;

    public string Missing => "there is no music at hand to compare its moves with";

    public string Sentence(MeasuredCandidate candidate)
    {
        var use = candidate.GeneralUse;
        return $"{Shares.InTen(use.Precision)} of its moves occur in the {Pieces(use)}; it practises {Shares.InTen(use.Recall)} of theirs";
    }

    public string Brief(MeasuredCandidate candidate) =>
        $"{Shares.InTen(candidate.GeneralUse.Precision)} of its moves are in the pieces; it holds {Shares.InTen(candidate.GeneralUse.Recall)} of theirs";

    public string Pro(MeasuredCandidate candidate)
    {
        var use = candidate.GeneralUse;
        if (use.Precision >= Many && use.Recall < Some)
        {
            return $"{Shares.InTen(use.Precision)} of its moves are met in the {Pieces(use)}, though it practises {Shares.InTen(use.Recall)} of theirs";
        }

        return use.Precision >= Many
            ? $"builds more than itself: {Shares.InTen(use.Precision)} of its moves are met in the {Pieces(use)}, and it practises {Shares.InTen(use.Recall)} of theirs"
            : $"practises {Shares.InTen(use.Recall)} of the moves of the {Pieces(use)}";
    }

    public string Con(MeasuredCandidate candidate)
    {
        var use = candidate.GeneralUse;
        return use.Precision < Many
            ? $"builds mostly itself: {Shares.InTen(use.Precision)} of its moves are met in the {Pieces(use)}"
            : $"gives few of music's moves often enough to learn them: {Shares.InTen(use.Recall)} of those in the {Pieces(use)}";
    }

    public string Better(MeasuredCandidate better, MeasuredCandidate worse)
    {
        var (one, other) = (better.GeneralUse, worse.GeneralUse);
        return one.Precision - other.Precision >= one.Recall - other.Recall
            ? $"more of the moves occur in the pieces ({Shares.Against(100 * one.Precision, 100 * other.Precision, " in 100")})"
            : $"more of the pieces' moves are practised ({Shares.Against(100 * one.Recall, 100 * other.Recall, " in 100")})";
    }

    private static string Pieces(GeneralUse use) => NumberWords.Of(use.Pieces, "piece");
}
