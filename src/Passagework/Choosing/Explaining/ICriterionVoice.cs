namespace Passagework.Choosing.Explaining;

/// <summary>Says what a candidate's figure on one criterion means, from what was counted and nothing else.</summary>
internal interface ICriterionVoice
{
    /// <summary>The fact behind the figure.</summary>
    string Sentence(MeasuredCandidate candidate);

    /// <summary>The same in a few words, for a narrow column.</summary>
    string Brief(MeasuredCandidate candidate);

    /// <summary>The figure as a merit.</summary>
    string Pro(MeasuredCandidate candidate);

    /// <summary>The figure as a fault.</summary>
    string Con(MeasuredCandidate candidate);

    /// <summary>What the one that is better has over the other.</summary>
    string Better(MeasuredCandidate better, MeasuredCandidate worse);

    /// <summary>Why there is no figure.</summary>
    string Missing { get; }
}
