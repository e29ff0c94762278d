using Passagework.Theory;

namespace Passagework.Tests.Theory;

public sealed class NoteSetTests
{
    [Theory]
    [InlineData("1 b3 4 5 b7", "A C D E G", new[] { 0, 3, 5, 7, 10 })]
    [InlineData("1 b3 4 b5 5 b7", "A C D Eb E G", new[] { 0, 3, 5, 6, 7, 10 })]
    [InlineData("1 2 3 #4 5 6 b7", "A B C# D# E F# G", new[] { 0, 2, 4, 6, 7, 9, 10 })]
    [InlineData("1 2 3 b5 b6 b7", "A B C# Eb F G", new[] { 0, 2, 4, 6, 8, 10 })]
    [InlineData("1 2 b3 4 b5 b6 6 7", "A B C D Eb F F# G#", new[] { 0, 2, 3, 5, 6, 8, 9, 11 })]
    [InlineData("1 b2 2 b3", "A Bb B C", new[] { 0, 1, 2, 3 })]
    [InlineData("1 b2 3 4 5 b6 b7", "A Bb C# D E F G", new[] { 0, 1, 4, 5, 7, 8, 10 })]
    [InlineData("1 2 5", "A B E", new[] { 0, 2, 7 })]
    [InlineData("1", "A", new[] { 0 })]
    public void Listed_takes_the_known_degrees_or_the_plainest(string degrees, string names, int[] semitones)
    {
        var set = NoteSet.Listed(Music.Name("A"), [.. semitones]);

        Assert.Equal(degrees, string.Join(' ', set.Degrees));
        Assert.Equal(names, Music.Names(set));
        Assert.Null(set.Scale);
    }

    [Fact]
    public void Listed_sounds_as_it_says_whatever_the_notes()
    {
        for (var mask = 0; mask < 2048; mask++)
        {
            int[] semitones = [0, .. Enumerable.Range(1, 11).Where(n => (mask >> (n - 1) & 1) == 1)];

            var set = NoteSet.Listed(Music.Name("A"), [.. semitones]);

            Assert.Equal(semitones, set.Degrees.Select(degree => degree.Semitones));
            Assert.True(
                set.Degrees.Zip(set.Degrees.Skip(1)).All(pair => pair.First.Number <= pair.Second.Number)
                    && set.Degrees.All(degree =>
                        Math.Abs(degree.Alteration) <= 1 || semitones is [0, 3, 6, 9]
                    ),
                string.Join(' ', set.Degrees)
            );
        }
    }

    [Theory]
    [InlineData(new int[0])]
    [InlineData(new[] { 1, 3 })]
    [InlineData(new[] { 0, 3, 3 })]
    [InlineData(new[] { 0, 12 })]
    public void Listed_refuses_what_does_not_ascend_within_the_octave(int[] semitones) =>
        Assert.Throws<ArgumentException>(() => NoteSet.Listed(default, [.. semitones]));

    [Theory]
    [InlineData("1", 45)]
    [InlineData("b3", 60)]
    [InlineData("b5", 51)]
    [InlineData(null, 46)]
    public void DegreeOf_names_a_key_above_the_root(string? degree, int key) =>
        Assert.Equal(degree, Music.Set("A", "minor blues").DegreeOf(key)?.ToString());

    [Fact]
    public void Contains_asks_for_the_pitch_class_in_any_octave()
    {
        var set = Music.Set("Eb", "minor pentatonic");

        Assert.True(set.Contains(3));
        Assert.True(set.Contains(66));
        Assert.False(set.Contains(64));
    }

    [Theory]
    [InlineData("A", 3, "minor pentatonic", "C Eb F G Bb")]
    [InlineData("A", -1, "minor pentatonic", "G# B C# D# F#")]
    [InlineData("A", -1, "major pentatonic", "Ab Bb C Eb F")]
    [InlineData("A", 4, "minor blues", "C# E F# G G# B")]
    [InlineData("A", 4, "major blues", "Db Eb Fb F Ab Bb")]
    [InlineData("D#", 0, "minor pentatonic", "D# F# G# A# C#")]
    [InlineData("D#", 12, "minor pentatonic", "D# F# G# A# C#")]
    public void Transposed_has_the_same_degrees_on_the_usual_root(
        string root,
        int semitones,
        string scale,
        string names
    )
    {
        var set = Music.Set(root, scale).Transposed(semitones);

        Assert.Equal(names, Music.Names(set));
        Assert.Equal(scale, set.Scale);
    }

    [Fact]
    public void Usual_root_names_differ_between_minor_and_major_on_two_keys()
    {
        var keys = Enumerable.Range(60, 12).ToArray();

        Assert.Equal(
            "C C# D Eb E F F# G G# A Bb B",
            string.Join(' ', keys.Select(key => RootNames.Usual(key, minor: true)))
        );
        Assert.Equal(
            "C Db D Eb E F F# G Ab A Bb B",
            string.Join(' ', keys.Select(key => RootNames.Usual(key, minor: false)))
        );
    }

    [Fact]
    public void Equal_sets_have_the_same_root_notes_and_name()
    {
        var named = Music.Set("A", "minor pentatonic");

        Assert.Equal(Music.Set("A", "minor pentatonic"), named);
        Assert.Equal(Music.Set("A", "minor pentatonic").GetHashCode(), named.GetHashCode());
        Assert.NotEqual(NoteSet.Listed(named.Root, named.Semitones), named);
        Assert.NotEqual(Music.Set("B", "minor pentatonic"), named);
    }

    [Fact]
    public void TryNamed_refuses_an_unknown_scale() =>
        Assert.False(NoteSet.TryNamed(default, "minor pentatonik", out _));
}
