using CsCheck;
using Passagework.Exercises;
using Passagework.Hands;
using Passagework.Notation;
using Passagework.Tests.Hands;

namespace Passagework.Tests.Notation;

/// <summary>Lines with chords come back from every format: all tones, places where the format has them, exact times.</summary>
public sealed class ChordRoundTripTests
{
    private static readonly Gen<Realization> Played = LineGen
        .Of(Technique.Free, most: 8)
        .Where(line => line.Notes.Any(note => note.With.Length > 0))
        .Select(line => Realizer.Realize(line, Player.At(2)))
        .Where(outcome => outcome.TryGet(out _, out _))
        .Select(outcome => outcome.OrThrow().Spelled());

    [Fact]
    public void Tab_keeps_every_tone() =>
        Played.Sample(
            played =>
            {
                var text = TextTab.Write(played);
                Assert.Equal(Places(played), Places(TextTab.Read(text).OrThrow().Recipe));
            },
            iter: 300
        );

    [Theory]
    [InlineData(ScoreStaves.StaffAndTab)]
    [InlineData(ScoreStaves.TabOnly)]
    public void MusicXml_keeps_every_tone(ScoreStaves staves) =>
        Played.Sample(
            played =>
            {
                var score = MusicXml.Write(played, new MusicXmlWriting { Staves = staves }).OrThrow();
                Assert.Equal(Places(played), Places(Scores.Read(score).Recipe));
            },
            iter: 300
        );

    [Fact]
    public void MusicXml_without_tab_and_Midi_keep_every_pitch() =>
        Played
            .Where(played => !played.Notes.Any(HasUnison)) // one key sounds once in MIDI
            .Sample(
                played =>
                {
                    var score = MusicXml
                        .Write(played, new MusicXmlWriting { Staves = ScoreStaves.StaffOnly })
                        .OrThrow();
                    var midi = Midi.Write(played);
                    var reading = new MidiReading { Instrument = played.Line.Recipe.Instrument };

                    Assert.Equal(
                        Keys(played.Line),
                        Keys(LineBuilder.Build(Scores.Read(score).Recipe).OrThrow())
                    );
                    Assert.Equal(
                        Keys(played.Line),
                        Keys(LineBuilder.Build(Midi.Read(midi, reading).OrThrow().Recipe).OrThrow())
                    );
                },
                iter: 300
            );

    private static bool HasUnison(PlayedNote note) =>
        note.Tones.Select(tone => tone.Tone.Midi).Distinct().Count() < note.With.Length + 1;

    private static string Places(Realization played) =>
        string.Join(
            ' ',
            played.Notes.Select(note =>
                Sorted(note.Tones.Select(tone => tone.Place.ToString())) + "*" + note.Note.Duration
            )
        );

    private static string Places(Recipe recipe) =>
        string.Join(
            ' ',
            recipe
                .Written!.Entries.Where(entry => !entry.IsRest) // an import is always written
                .Select(entry =>
                    Sorted(
                        entry.With.Select(tone => tone.Place).Append(entry.Place).Select(place => $"{place}")
                    )
                    + "*"
                    + entry.Duration
                )
        );

    private static string Keys(Line line) =>
        string.Join(
            ' ',
            line.Notes.Select(note =>
                Sorted(note.Tones.Select(tone => $"{tone.Midi}")) + $"@{note.Onset}*{note.Duration}"
            )
        );

    private static string Sorted(IEnumerable<string> words) =>
        string.Join('+', words.Order(StringComparer.Ordinal));
}
