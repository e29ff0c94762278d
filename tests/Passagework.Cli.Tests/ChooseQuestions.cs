using System.Collections.Immutable;

namespace Passagework.Cli.Tests;

/// <summary>Varied questions to choose by: players, techniques, keys, instruments, weights, marks, forms, files, faults.</summary>
internal static class ChooseQuestions
{
    /// <summary>Files that questions name with an @ before them.</summary>
    public static ImmutableArray<(string Name, string Text)> Files { get; } =
    [
        ("even.json", """{ "passagework": 1, "weights": { "even-load": 1, "comes-out-even": 1 } }"""),
        (
            "music.json",
            """{ "passagework": 1, "weights": { "use-in-music": 3, "general-use": 2, "even-load": 1 } }"""
        ),
        (
            "order.json",
            """{ "passagework": 1, "order": ["staying-power", "even-load", "rhythmic-ambiguity"] }"""
        ),
        ("rhythm.json", """{ "passagework": 1, "weights": { "rhythmic-ambiguity": 1 } }"""),
        (
            "anchors.json",
            """{ "passagework": 1, "anchors": { "general-use": [0.1, 0.3], "use-in-music": [0, 0.02] } }"""
        ),
        (
            "marks.json",
            """
            { "passagework": 1, "weights": { "even-load": 1, "fun": 2 },
              "marks": { "fun": { "pedal": 0.9, "groups-of-five": 0.4, "groups-of-six": 0.4 } } }
            """
        ),
        ("nothing.json", """{ "passagework": 1, "weights": { "even-load": 0 } }"""),
        (
            "drill.json",
            """
            { "passagework": 1, "title": "Saltmarsh drill", "notes": { "root": "E", "scale": "natural minor" },
              "layout": { "kind": "per-string", "count": 3, "from": "6:7" }, "cell": { "offsets": [0, 2, 1, 3] },
              "movement": { "direction": "up-and-down" } }
            """
        ),
        (
            "tune.json",
            """
            { "passagework": 1, "title": "Bram's tune", "written": [
              { "place": "2:5", "duration": "1/8" }, { "place": "2:8", "duration": "1/8" }, { "place": "1:5", "duration": "1/4" },
              { "place": "2:8", "duration": "1/8" }, { "place": "3:7", "duration": "1/8" }, { "place": "3:5", "duration": "1/4" } ] }
            """
        ),
    ];

    /// <summary>Names and what stands after <c>choose</c>.</summary>
    public static ImmutableArray<(string Name, string[] Args)> All { get; } =
    [
        .. Lines.Select(line =>
        {
            var colon = line.IndexOf(':', StringComparison.Ordinal);
            return (
                line[..colon],
                line[(colon + 1)..].Trim().Split(' ', StringSplitOptions.RemoveEmptyEntries)
            );
        }),
    ];

    private static ImmutableArray<string> Lines =>
        [
            "three-families: groups-of-three groups-of-five one-sided-rolls-low",
            "three-beginner: groups-of-three groups-of-five one-sided-rolls-low --player beginner",
            "three-expert: groups-of-three groups-of-five one-sided-rolls-low --player expert",
            "three-swept: groups-of-three groups-of-five one-sided-rolls-low --technique sweep",
            "three-legato: groups-of-three groups-of-five one-sided-rolls-low --technique legato",
            "three-even-wanted: groups-of-three groups-of-five one-sided-rolls-low --weights @even.json",
            "three-for-music: groups-of-three groups-of-five one-sided-rolls-low --weights @music.json",
            "three-in-order: groups-of-three groups-of-five one-sided-rolls-low --weights @order.json",
            "three-own-anchors: groups-of-three groups-of-five one-sided-rolls-low --weights @anchors.json",
            "whole-library:",
            "whole-library-topsis: --method topsis",
            "whole-library-bass: --tuning bass --player elementary",
            "whole-library-rhythm-only: --weights @rhythm.json",
            "fours-and-sixes: groups-of-four groups-of-six",
            "why-pedal: pedal straight groups-of-four --why pedal straight",
            "why-not-rolls: groups-of-six one-sided-rolls-high --why one-sided-rolls-high groups-of-six",
            "fifths-and-skips: skipped-fifths skipped-fours every-other-note",
            "fifths-economy: skipped-fifths skipped-fours every-other-note --technique economy",
            "out-and-back: out-and-back-fours out-and-back-sixes reversed-threes",
            "in-twelve-eight: groups-of-four groups-of-five --meter 12/8 --notes-per-beat 3",
            "in-three: groups-of-four displaced-fours groups-of-five --meter 3/4",
            "seven-eight: groups-of-three groups-of-seven --meter 7/8",
            "major-thirds: scale-thirds groups-of-three --scale major --root G --near 2",
            "seven-string: groups-of-five groups-of-six --tuning seven-string",
            "small-hands: position-shift diagonal one-string-run --player 1.5",
            "no-little-finger: groups-of-three groups-of-five finger-orders --avoid-finger 4",
            "with-capo: groups-of-four pedal --capo 3 --near 3",
            "own-marks: pedal groups-of-five groups-of-six trill --weights @marks.json",
            "own-drill: @drill.json groups-of-four groups-of-six",
            "own-tune: @tune.json groups-of-three",
            "rising-and-falling: groups-of-five-up groups-of-five-down groups-of-six-up",
            "straight-scales: straight-up finger-orders-crossed",
            "sweeps-swept: three-string-sweeps one-sided-rolls-low one-sided-rolls-high --technique sweep --player advanced",
            "bursts-and-loops: bursts two-string-loop trill first-notes",
            "slurred: slurred-threes groups-of-three trill --technique legato --player elementary",
            "plucked: thumb-and-fingers groups-of-four every-other-note --technique fingers",
            "hybrid: skipped-fifths skipped-fours --technique hybrid --player advanced",
            "twins: groups-of-four displaced-fours",
            "first-up: groups-of-three groups-of-five --first up",
            "promethee-small: groups-of-three groups-of-five straight pedal --method promethee",
            "nothing-counts: groups-of-three groups-of-five --weights @nothing.json",
            "only-one: groups-of-three",
            "misspelt: groups-of-thee groups-of-five",
        ];
}
