using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Engraving.Sheets;

/// <summary>A form in which the music of a sheet can be printed.</summary>
/// <param name="Music">The music.</param>
/// <param name="Roomy">Whether it is taken only where all else of the sheet keeps its full room.</param>
internal readonly record struct MusicChoice(Outcome<SheetMusic> Music, bool Roomy = false);

/// <summary>The forms in which the music of a sheet can be printed, from the whole of it to its first bar.</summary>
/// <param name="line">The line.</param>
/// <param name="systems">Its engraving.</param>
/// <param name="variation">The engraving of a variation with the sentence over it; null for none.</param>
/// <param name="staffMm">Height of the staff that was asked for.</param>
internal sealed class MusicChoices(
    Line line,
    ScoreSystems systems,
    (string Words, ScoreSystems Systems)? variation,
    double staffMm
)
{
    private const int MostOpening = 4;
    private const int LeastOpening = 2;
    private const int MostTurn = 2;

    // More bars than this never fit on a page and are not even tried: a bar is at least a third of a system.
    private const int MostWhole = 18;

    // Bars of a line without a turn from which as many systems are taken as fit.
    private const int MostBeginning = 40;

    // Staves of sheets with much and with little music (common practice: Gould, Behind Bars, 2011, lists 6.5 mm for
    // parts and 7.9 mm for parts in teaching), and the one between them.
    private const double DenseMm = 6.5;
    private const double UsualMm = 7.0;
    private const double LargeMm = 7.9;

    private readonly int _bars = systems.Bars;
    private readonly ImmutableArray<double> _staves = staffMm > DenseMm ? [staffMm, DenseMm] : [staffMm];

    /// <summary>Each form in the order in which they are tried.</summary>
    /// <param name="roomMm">Height that music may have at most.</param>
    public IEnumerable<MusicChoice> All(double roomMm)
    {
        var parts = line.Recipe.Written is null
            ? Openings(LeastOpening, MostOpening).Concat(Openings(1, 1))
            : WholeSystems(roomMm);
        return Roomy(roomMm).Concat(Wholes()).Concat(parts).Concat(Beginnings());
    }

    private BarSpan Everything => new(0, _bars);

    private IEnumerable<MusicChoice> Wholes() =>
        _bars > MostWhole ? [] : _staves.Select(staff => new MusicChoice(Whole(staff)));

    // The whole with something more: a larger staff, if it takes no more systems, and the variation.
    private IEnumerable<MusicChoice> Roomy(double roomMm)
    {
        if (_bars > MostWhole || !Whole(staffMm).TryGet(out var usual, out _) || usual.HeightMm > roomMm)
        {
            return [];
        }

        var large =
            staffMm is >= UsualMm and < LargeMm
            && Whole(LargeMm).TryGet(out var larger, out _)
            && larger.Opening.Length == usual.Opening.Length;
        var choices = new List<MusicChoice>();
        foreach (var staff in large ? new[] { LargeMm, staffMm } : [staffMm])
        {
            if (variation is { } varied)
            {
                choices.Add(new MusicChoice(Varied(varied, staff), Roomy: true));
            }
        }

        return large ? choices.Append(new MusicChoice(Whole(LargeMm), Roomy: true)) : choices;
    }

    private Outcome<SheetMusic> Whole(double staff) =>
        systems.Of(Everything, staff).Then<SheetMusic>(all => new SheetMusic(all, "", [], []));

    private Outcome<SheetMusic> Varied((string Words, ScoreSystems Systems) varied, double staff) =>
        Whole(staff)
            .Then(music =>
                varied
                    .Systems.Of(Everything, staff)
                    .Then<SheetMusic>(all =>
                        music with
                        {
                            Variation = new SheetMusic([], varied.Words, all, []),
                        }
                    )
            );

    private IEnumerable<MusicChoice> Openings(int least, int most) =>
        from staff in _staves
        from opening in Down(Math.Min(most, _bars - 1), least)
        from written in Down(MostTurn, 1)
        select new MusicChoice(Opening(opening, written, staff));

    private IEnumerable<MusicChoice> Beginnings() =>
        from staff in _staves
        from opening in Down(Math.Min(MostOpening, _bars - 1), 1)
        select new MusicChoice(Opening(opening, 0, staff));

    // Of a line that does not turn round: as many bars as fit, up to the end of a system.
    private IEnumerable<MusicChoice> WholeSystems(double roomMm)
    {
        var span = new BarSpan(0, Math.Min(_bars, MostBeginning));
        var ends =
            from staff in _staves
            let all = systems.SystemsOf(span, staff).TryGet(out var found, out _) ? found : []
            from count in Enumerable.Range(1, all.Length)
            let height = new SheetMusic([.. all.Take(count).Select(one => one.Figure)], "", [], []).HeightMm
            where height <= roomMm && all[count - 1].Bars < _bars
            orderby all[count - 1].Bars descending, staff descending
            select (Bars: all[count - 1].Bars ?? 0, Staff: staff);
        return ends.Select(end => new MusicChoice(Opening(end.Bars, 0, end.Staff)));
    }

    private static IEnumerable<int> Down(int from, int to) =>
        Enumerable.Range(to, Math.Max(0, from - to + 1)).Reverse();

    private Outcome<SheetMusic> Opening(int opening, int written, double staff)
    {
        var turn = TurnBars.Of(line, opening, written);
        var then = turn.To > turn.From ? $", then {NumberWords.Bars(turn.From + 1, turn.To)}" : "";
        var bars = $"of {_bars} bars are printed {NumberWords.Bars(1, opening)}{then}";
        var (first, second) = (new BarSpan(0, opening), new BarSpan(turn.From, turn.To));
        var lost = systems.Lost(first, second);
        return systems
            .Of(first, staff)
            .Then(before =>
                systems
                    .Of(second, staff)
                    .Then<SheetMusic>(after => new SheetMusic(before, turn.Sentence, after, [bars, .. lost]))
            );
    }
}
