using System.Collections.Immutable;
using Passagework.Engraving.Drawing;
using Passagework.Exercises;
using Passagework.Foundation;

namespace Passagework.Engraving.Sheets;

/// <summary>The forms in which the music of a sheet can be printed, from the whole of it to its first bar.</summary>
internal sealed class MusicChoices(Line line, ScoreSystems systems, double staffMm)
{
    private const int MostOpening = 4;
    private const int LeastOpening = 2;
    private const int MostTurn = 2;

    // More bars than this never fit on a page and are not even tried: a bar is at least a third of a system.
    private const int MostWhole = 18;

    // The least staff of a dense sheet (common practice: Gould, Behind Bars, 2011, lists 6.5 mm for parts).
    private const double DenseMm = 6.5;

    private static readonly ImmutableArray<bool> Tightness = [false, true];

    private readonly int _bars = BarCut.Count(line);

    /// <summary>Each form with whether the sheet around it may be tight, in the order in which they are tried.</summary>
    public IEnumerable<(Outcome<SheetMusic> Music, bool Tight)> All()
    {
        ImmutableArray<double> staves = staffMm > DenseMm ? [staffMm, DenseMm] : [staffMm];
        var forms = new[] { Wholes(), Openings(LeastOpening, MostOpening), Openings(1, 1), Beginnings() };
        return from form in forms
            from tight in Tightness
            from staff in staves
            from music in form
            select (music(staff), tight);
    }

    private IEnumerable<Func<double, Outcome<SheetMusic>>> Wholes() =>
        _bars <= MostWhole
            ? [staff => systems.Of(0, _bars, staff).Then<SheetMusic>(all => new SheetMusic(all, "", [], []))]
            : [];

    private IEnumerable<Func<double, Outcome<SheetMusic>>> Openings(int least, int most) =>
        from opening in Down(Math.Min(most, _bars - 1), least)
        from written in Down(MostTurn, 1)
        select (Func<double, Outcome<SheetMusic>>)(staff => Opening(opening, written, staff));

    private IEnumerable<Func<double, Outcome<SheetMusic>>> Beginnings() =>
        Down(Math.Min(MostOpening, _bars - 1), 1)
            .Select(opening => (Func<double, Outcome<SheetMusic>>)(staff => Opening(opening, 0, staff)));

    private static IEnumerable<int> Down(int from, int to) =>
        Enumerable.Range(to, Math.Max(0, from - to + 1)).Reverse();

    private Outcome<SheetMusic> Opening(int opening, int written, double staff)
    {
        var turn = TurnBars.Of(line, opening, written);
        var then = turn.To > turn.From ? $", then {NumberWords.Bars(turn.From + 1, turn.To)}" : "";
        var bars = $"of {_bars} bars are printed {NumberWords.Bars(1, opening)}{then}";
        var lost = systems.Lost(new BarSpan(0, opening), new BarSpan(turn.From, turn.To));
        return systems
            .Of(0, opening, staff)
            .Then(first =>
                systems
                    .Of(turn.From, turn.To, staff)
                    .Then<SheetMusic>(second => new SheetMusic(first, turn.Sentence, second, [bars, .. lost]))
            );
    }
}
