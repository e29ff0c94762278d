using System.Collections.Immutable;
using Passagework.Choosing.Measures;

namespace Passagework.Choosing.Explaining;

/// <summary>The voice of each criterion.</summary>
internal static class Voices
{
    private static readonly ImmutableDictionary<string, ICriterionVoice> Measured =
        ImmutableDictionary.CreateRange<string, ICriterionVoice>([
            KeyValuePair.Create<string, ICriterionVoice>(Criteria.EvenLoad.Id, new EvenLoadVoice()),
            KeyValuePair.Create<string, ICriterionVoice>(Criteria.GeneralUse.Id, new GeneralUseVoice()),
            KeyValuePair.Create<string, ICriterionVoice>(Criteria.StayingPower.Id, new StayingPowerVoice()),
            KeyValuePair.Create<string, ICriterionVoice>(Criteria.UseInMusic.Id, new UseInMusicVoice()),
            KeyValuePair.Create<string, ICriterionVoice>(Criteria.RhythmicAmbiguity.Id, new AmbiguityVoice()),
            KeyValuePair.Create<string, ICriterionVoice>(Criteria.ComesOutEven.Id, new ComesOutEvenVoice()),
        ]);

    /// <summary>Of the criterion at a place of a list; one that is not measured is the teacher's own.</summary>
    public static ICriterionVoice Of(ImmutableArray<Criterion> criteria, int place) =>
        Measured.TryGetValue(criteria[place].Id, out var voice)
            ? voice
            : new OwnMarkVoice(criteria[place], place);
}
