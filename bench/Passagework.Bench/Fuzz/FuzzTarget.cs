using System.Reflection;
using System.Text;
using Passagework.Exercises;
using Passagework.Foundation;
using Passagework.Hands;
using Passagework.Notation;

namespace Passagework.Bench.Fuzz;

/// <summary>A reader under test with the good inputs that are spoiled for it.</summary>
/// <param name="Name">As on the command line; its seeds lie in the folder of that name.</param>
/// <param name="Accepts">Whether the reader took an input; anything thrown is a crash.</param>
internal sealed record FuzzTarget(string Name, Func<string, bool> Accepts)
{
    private const int MeasuredNotes = 300;

    public static IReadOnlyList<FuzzTarget> All { get; } =
    [
        new("tab", AcceptsTab),
        new("musicxml", AcceptsMusicXml),
        new("recipe", AcceptsRecipe) { Spoil = JsonSpoiler.Spoil },
        new("midi", AcceptsMidi) { Letters = Encoding.Latin1, Mend = MidiLengths.Mend },
    ];

    /// <summary>How bytes become the text of an input; Latin-1 keeps every byte as it is.</summary>
    public Encoding Letters { get; private init; } = Encoding.UTF8;

    /// <summary>What is done to three of four inputs after they were spoiled; null for nothing.</summary>
    public Action<byte[]>? Mend { get; private init; }

    /// <summary>How three of four inputs are spoiled by their meaning; null for never.</summary>
    public Func<string, Random, string>? Spoil { get; private init; }

    /// <summary>Whether inputs are text and not bytes.</summary>
    public bool IsText => Letters is UTF8Encoding;

    /// <summary>An input as it is printed: text, or bytes in hexadecimal.</summary>
    public string Shown(string input) => IsText ? input : Convert.ToHexString(Letters.GetBytes(input));

    private static MusicXmlReading Unrolled { get; } = new() { UnrollRepeats = true };

    public IReadOnlyList<string> Seeds()
    {
        var assembly = Assembly.GetExecutingAssembly();
        return
        [
            .. assembly
                .GetManifestResourceNames()
                .Where(name => name.StartsWith($"seeds/{Name}/", StringComparison.Ordinal))
                .Order(StringComparer.Ordinal)
                .Select(name => ReadResource(assembly, name)),
        ];
    }

    private static bool AcceptsTab(string text)
    {
        if (!TextTab.Read(text).TryGet(out var import, out _))
        {
            return false;
        }

        var entries = import.Recipe.Written?.Entries ?? [];
        return entries.Length > 0 && entries.All(entry => entry.Duration > Fraction.Zero)
            ? true
            : throw new InvalidOperationException("An accepted tab has no notes, or one without length.");
    }

    // What is read can be laid out, and when it is written again it keeps its notes.
    private static bool AcceptsMidi(string text)
    {
        if (!Midi.Read(Encoding.Latin1.GetBytes(text)).TryGet(out var import, out _))
        {
            return false;
        }

        var line = LineBuilder.Build(import.Recipe).OrThrow();
        return
            line.Notes.Sum(note => note.With.Length + 1) + import.NotesLeftOut
            == import.Tracks[import.Track - 1].Notes
            ? true
            : throw new InvalidOperationException("Notes are neither kept nor left out.");
    }

    // What is read must be written without loss, and what can be laid out must be measured or refused.
    private static bool AcceptsRecipe(string text)
    {
        if (!RecipeJson.Read(text).TryGet(out var recipe, out _))
        {
            return false;
        }

        if (
            !RecipeJson.Read(RecipeJson.Write(recipe)).TryGet(out var again, out var fault)
            || again != recipe
        )
        {
            throw new InvalidOperationException($"A recipe changes when it is written: {fault}");
        }

        return LineBuilder.Build(recipe).TryGet(out var line, out _)
            && (line.Notes.Length > MeasuredNotes || Measurer.Measure(line, Player.At(2)) is not null);
    }

    // What is read can be laid out, with every note where it was read.
    private static bool AcceptsMusicXml(string text)
    {
        if (!MusicXml.Read(Encoding.UTF8.GetBytes(text)).TryGet(out var import, out _))
        {
            return false;
        }

        var line = LineBuilder.Build(import.Recipe).OrThrow();
        return MusicXml.Read(Encoding.UTF8.GetBytes(text), Unrolled) is not null && line.Notes.Length > 0;
    }

    private string ReadResource(Assembly assembly, string name)
    {
        using var stream = assembly.GetManifestResourceStream(name) ?? throw new FileNotFoundException(name);
        using var reader = new StreamReader(stream, Letters);
        return reader.ReadToEnd();
    }
}
