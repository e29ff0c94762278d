using System.Text.RegularExpressions;
using Passagework.Tests.Theory;
using Passagework.Theory;

namespace Passagework.Tests.Outside;

/// <summary>Names of scales and chords against an independent theory library (npm package "tonal", pinned).</summary>
public sealed partial class SpellingTests
{
    // Where we differ on purpose: scale, root, what the library says, what we say.
    private static readonly (string Scale, string Root, string Theirs, string Ours)[] Exceptions =
    [
        ("minor blues", "Eb", "Eb Gb Ab Bbb Bb Db", "Eb Gb Ab A Bb Db"),
        ("minor blues", "F", "F Ab Bb Cb C Eb", "F Ab Bb B C Eb"),
        ("minor blues", "Bb", "Bb Db Eb Fb F Ab", "Bb Db Eb E F Ab"),
        ("locrian", "Eb", "Eb Fb Gb Ab Bbb Cb Db", "Eb Fb Gb Ab A Cb Db"),
        ("chromatic", "Db", "Db Ebb Eb Fb F Gb Abb Ab Bbb Bb Cb C", "Db D Eb Fb F Gb G Ab A Bb Cb C"),
        ("chromatic", "Eb", "Eb Fb F Gb G Ab Bbb Bb Cb C Db D", "Eb Fb F Gb G Ab A Bb Cb C Db D"),
        ("chromatic", "Ab", "Ab Bbb Bb Cb C Db Ebb Eb Fb F Gb G", "Ab A Bb Cb C Db D Eb Fb F Gb G"),
        ("diminished triad", "Eb", "Eb Gb Bbb", "Eb Gb A"),
        ("augmented triad", "F#", "F# A# C##", "F# A# D"),
        ("augmented triad", "B", "B D# F##", "B D# G"),
        ("half-diminished seventh", "Eb", "Eb Gb Bbb Db", "Eb Gb A Db"),
        ("diminished seventh", "C", "C Eb Gb Bbb", "C Eb Gb A"),
        ("diminished seventh", "Eb", "Eb Gb Bbb Dbb", "Eb Gb A C"),
        ("diminished seventh", "F", "F Ab Cb Ebb", "F Ab Cb D"),
        ("diminished seventh", "Bb", "Bb Db Fb Abb", "Bb Db Fb G"),
    ];

    [Fact]
    public void Names_equal_the_outside_spelling_on_twelve_roots_but_for_the_listed_exceptions()
    {
        foreach (var formula in Scales.All)
        {
            var minor = NoteSet.Listed(default, formula.Semitones).IsMinor;
            foreach (
                var root in Enumerable.Range(0, 12).Select(key => RootNames.Usual(key, minor).ToString())
            )
            {
                var exception = Array.Find(
                    Exceptions,
                    listed => listed.Scale == formula.Name && listed.Root == root
                );

                var ours = Music.Names(Music.Set(root, formula.Name));
                var theirs = Scale(root, formula.Name);

                Assert.Equal($"{formula.Name} {exception.Theirs ?? ours}", $"{formula.Name} {theirs}");
                Assert.Equal(exception.Ours ?? theirs, ours);
            }
        }
    }

    [Fact]
    public void Exceptions_really_differ_and_each_stands_on_a_usual_root()
    {
        Assert.Equal(15, Exceptions.Length);
        Assert.All(
            Exceptions,
            listed =>
            {
                var set = Music.Set(listed.Root, listed.Scale);

                Assert.NotEqual(listed.Theirs, listed.Ours);
                Assert.Equal(RootNames.Usual(set.Root.PitchClass, set.IsMinor), set.Root);
            }
        );
    }

    [Theory]
    [InlineData("harmonic minor", "G#", "G# A# B C# D# E F##")]
    [InlineData("harmonic minor", "D#", "D# E# F# G# A# B C##")]
    [InlineData("harmonic minor", "A#", "A# B# C# D# E# F# G##")]
    [InlineData("melodic minor", "G#", "G# A# B C# D# E# F##")]
    [InlineData("melodic minor", "D#", "D# E# F# G# A# B# C##")]
    public void Names_keep_the_double_sharp_leading_note_as_the_outside_spelling_does(
        string scale,
        string root,
        string names
    )
    {
        Assert.Equal(names, Scale(root, scale));
        Assert.Equal(names, Music.Names(Music.Set(root, scale)));
    }

    [Fact]
    public void Names_keep_no_other_double_sharp_beside_the_leading_note()
    {
        Assert.Equal("A# B# C# D# E# F## G##", Scale("A#", "melodic minor"));
        Assert.Equal("A# B# C# D# E# G G##", Music.Names(Music.Set("A#", "melodic minor")));
    }

    [Fact]
    public void Names_differ_on_any_root_only_where_the_outside_name_has_a_double_sign_or_is_a_flat_blue_note()
    {
        foreach (
            var (root, formula) in Roots().SelectMany(root => Scales.All.Select(formula => (root, formula)))
        )
        {
            var ours = Music.Names(Music.Set(root, formula.Name)).Split(' ');
            var theirs = Scale(root, formula.Name).Split(' ');

            for (var i = 0; i < theirs.Length; i++)
            {
                var blue = formula.Name == "minor blues" && i == 3 && theirs[i] is "Cb" or "Fb";
                Assert.True(
                    (ours[i] == theirs[i]) != (blue || IsRespelled(theirs[i], formula.Name, i)),
                    $"{root} {formula.Name}: {ours[i]}, theirs {theirs[i]}"
                );
            }
        }
    }

    [Fact]
    public void Chord_tones_equal_the_outside_spelling_but_for_double_signs()
    {
        foreach (var (root, kind) in Roots().SelectMany(root => ChordKind.All.Select(kind => (root, kind))))
        {
            var ours = new Chord(Music.Name(root), kind).Tones.Select(tone => tone.ToString()).ToArray();
            var theirs = Chord(root, kind.Symbol == "mmaj7" ? "mMaj7" : kind.Symbol).Split(' ');

            Assert.Equal(theirs.Length, ours.Length);
            for (var i = 0; i < theirs.Length; i++)
            {
                Assert.True(
                    (ours[i] == theirs[i]) != DoubleSign().IsMatch(theirs[i]),
                    $"{root}{kind.Symbol}: {ours[i]}, theirs {theirs[i]}"
                );
            }
        }
    }

    private static bool IsRespelled(string theirs, string scale, int index)
    {
        var leadingNote =
            scale is "harmonic minor" or "melodic minor"
            && index == 6
            && theirs.EndsWith("##", StringComparison.Ordinal);
        return DoubleSign().IsMatch(theirs) && !leadingNote;
    }

    private static IEnumerable<string> Roots() =>
        from letter in "CDEFGAB"
        from sign in new[] { "b", "", "#" }
        select letter + sign;

    private static string Scale(string root, string scale) =>
        scale switch
        {
            "natural minor" => Said("scales", root, "aeolian"),
            "major triad" => Chord(root, ""),
            "minor triad" => Chord(root, "m"),
            "diminished triad" => Chord(root, "dim"),
            "augmented triad" => Chord(root, "aug"),
            "dominant seventh" => Chord(root, "7"),
            "major seventh" => Chord(root, "maj7"),
            "minor seventh" => Chord(root, "m7"),
            "half-diminished seventh" => Chord(root, "m7b5"),
            "diminished seventh" => Chord(root, "dim7"),
            _ => Said("scales", root, scale),
        };

    private static string Chord(string root, string kind) => Said("chords", root, kind);

    private static string Said(string what, string root, string name) =>
        TheoryLibrary.Said.GetProperty(what).GetProperty(root).GetProperty(name).GetString()
        ?? throw new InvalidOperationException($"The library says nothing of {root} {name}.");

    [GeneratedRegex("##|bb", RegexOptions.None, matchTimeoutMilliseconds: 1000)]
    private static partial Regex DoubleSign();
}
