using Passagework.Theory;

namespace Passagework.Tests.Theory;

public sealed class SpellerNamesTests
{
    [Theory]
    [InlineData("minor pentatonic", "0 3 5 7 10", "A C D E G")]
    [InlineData("major pentatonic", "0 2 4 7 9", "A B C# E F#")]
    [InlineData("minor blues", "0 3 5 6 7 10", "A C D Eb E G")]
    [InlineData("major blues", "0 2 3 4 7 9", "A B C C# E F#")]
    [InlineData("major", "0 2 4 5 7 9 11", "A B C# D E F# G#")]
    [InlineData("dorian", "0 2 3 5 7 9 10", "A B C D E F# G")]
    [InlineData("phrygian", "0 1 3 5 7 8 10", "A Bb C D E F G")]
    [InlineData("lydian", "0 2 4 6 7 9 11", "A B C# D# E F# G#")]
    [InlineData("mixolydian", "0 2 4 5 7 9 10", "A B C# D E F# G")]
    [InlineData("natural minor", "0 2 3 5 7 8 10", "A B C D E F G")]
    [InlineData("locrian", "0 1 3 5 6 8 10", "A Bb C D Eb F G")]
    [InlineData("harmonic minor", "0 2 3 5 7 8 11", "A B C D E F G#")]
    [InlineData("melodic minor", "0 2 3 5 7 9 11", "A B C D E F# G#")]
    [InlineData("chromatic", "0 1 2 3 4 5 6 7 8 9 10 11", "A Bb B C C# D Eb E F F# G G#")]
    [InlineData("major triad", "0 4 7", "A C# E")]
    [InlineData("minor triad", "0 3 7", "A C E")]
    [InlineData("diminished triad", "0 3 6", "A C Eb")]
    [InlineData("augmented triad", "0 4 8", "A C# E#")]
    [InlineData("dominant seventh", "0 4 7 10", "A C# E G")]
    [InlineData("major seventh", "0 4 7 11", "A C# E G#")]
    [InlineData("minor seventh", "0 3 7 10", "A C E G")]
    [InlineData("half-diminished seventh", "0 3 6 10", "A C Eb G")]
    [InlineData("diminished seventh", "0 3 6 9", "A C Eb Gb")]
    public void Names_of_every_scale_on_A(string scale, string semitones, string names)
    {
        var set = Music.Set("A", scale);

        Assert.Equal(semitones, string.Join(' ', set.Semitones));
        Assert.Equal(names, Music.Names(set));
    }

    [Theory]
    [InlineData("C Eb F G Bb")]
    [InlineData("C# E F# G# B")]
    [InlineData("D F G A C")]
    [InlineData("Eb Gb Ab Bb Db")]
    [InlineData("E G A B D")]
    [InlineData("F Ab Bb C Eb")]
    [InlineData("F# A B C# E")]
    [InlineData("G Bb C D F")]
    [InlineData("G# B C# D# F#")]
    [InlineData("A C D E G")]
    [InlineData("Bb Db Eb F Ab")]
    [InlineData("B D E F# A")]
    [InlineData("D# F# G# A# C#")]
    public void Names_of_the_minor_pentatonic_in_every_key(string names) =>
        Assert.Equal(names, Music.Names(Music.Set(names.Split(' ')[0], "minor pentatonic")));

    [Theory]
    [InlineData("F", "F Ab Bb B C Eb")]
    [InlineData("Bb", "Bb Db Eb E F Ab")]
    [InlineData("Eb", "Eb Gb Ab A Bb Db")]
    [InlineData("E", "E G A Bb B D")]
    [InlineData("C", "C Eb F Gb G Bb")]
    public void Names_of_a_blue_note_are_never_Cb_Fb_or_double_flat(string root, string names) =>
        Assert.Equal(names, Music.Names(Music.Set(root, "minor blues")));

    [Theory]
    [InlineData("C", "diminished seventh", "C Eb Gb A")]
    [InlineData("Eb", "diminished seventh", "Eb Gb A C")]
    [InlineData("Bb", "diminished seventh", "Bb Db Fb G")]
    [InlineData("Eb", "diminished triad", "Eb Gb A")]
    [InlineData("Eb", "half-diminished seventh", "Eb Gb A Db")]
    [InlineData("Bb", "locrian", "Bb Cb Db Eb Fb Gb Ab")]
    [InlineData("Ab", "minor triad", "Ab Cb Eb")]
    public void Names_have_no_double_flats_but_keep_Cb_and_Fb(string root, string scale, string names) =>
        Assert.Equal(names, Music.Names(Music.Set(root, scale)));

    [Theory]
    [InlineData("G#", "harmonic minor", "G# A# B C# D# E F##")]
    [InlineData("D#", "melodic minor", "D# E# F# G# A# B# C##")]
    [InlineData("A#", "harmonic minor", "A# B# C# D# E# F# G##")]
    [InlineData("G#", "major", "G# A# B# C# D# E# G")]
    [InlineData("D#", "major triad", "D# G A#")]
    public void Names_keep_a_double_sharp_only_on_the_leading_note_of_minor(
        string root,
        string scale,
        string names
    ) => Assert.Equal(names, Music.Names(Music.Set(root, scale)));

    [Fact]
    public void Names_sound_as_the_semitones_say_on_every_root_a_user_can_write()
    {
        foreach (var root in Roots())
        {
            foreach (var formula in Scales.All)
            {
                Assert.True(NoteSet.TryNamed(root, formula.Name, out var set));
                var sounding = Speller
                    .Names(set)
                    .Select(name => (name.PitchClass - root.PitchClass + 12) % 12);

                Assert.Equal(formula.Semitones, sounding);
                Assert.Equal(root, Speller.Names(set)[0]);
            }
        }
    }

    private static IEnumerable<NoteName> Roots() =>
        from letter in Enumerable.Range(0, 7)
        from alteration in Enumerable.Range(-1, 3)
        select NoteName.Of(letter, alteration);
}
