using System.Buffers.Binary;
using System.Text;
using System.Text.Json.Nodes;

namespace Passagework.Cli.Tests;

/// <summary><c>show EX --as wav</c>, <c>--as times</c> and timed MIDI.</summary>
public sealed class SoundCommandTests : IDisposable
{
    private readonly Session _session = new();

    [Fact]
    public void An_exercise_is_heard()
    {
        var (code, output, error) = Show("--as wav --tempo 200 --technique economy");
        var wav = _session.Bytes.ToArray();

        Assert.Equal((0, "", ""), (code, output, error));
        Assert.Equal("RIFF", Encoding.ASCII.GetString(wav, 0, 4));
        Assert.Equal((2, 44_100, 16), (Half(wav, 22), Whole(wav, 24), Half(wav, 34)));
        // 40 sixteenths at 200 last 3 s.
        Assert.InRange(Whole(wav, 40) / 4 / 44_100.0, 3, 8);
    }

    [Fact]
    public void Everything_that_can_sound_sounds_at_once()
    {
        var file = Path.Combine(_session.Folder, "all.wav");
        const string words =
            "--as wav --tempo 200 --sound driven --click backbeat --click-gap 2/1 --count-in 1 --repeat 2 "
            + "--from-tempo 160 --bars 1-2 --manner palm-muted --groove shuffle --drone root --bits 24 --rate 48000 --mono";
        var (code, output, error) = _session.Run([
            "show",
            "groups-of-five-up",
            .. words.Split(' '),
            "--backing",
            "Am7 | D7",
            "-o",
            file,
        ]);
        var wav = File.ReadAllBytes(file);

        Assert.Equal((0, "", ""), (code, output, error));
        Assert.Equal((1, 48_000, 24), (Half(wav, 22), Whole(wav, 24), Half(wav, 34)));
    }

    [Fact]
    public void The_same_words_give_the_same_bytes()
    {
        Show("--as wav --tempo 200 --bars 1");
        var first = _session.Bytes.ToArray();
        Show("--as wav --tempo 200 --bars 1");

        Assert.Equal(first, _session.Bytes.ToArray());
    }

    [Fact]
    public void Times_tell_when_every_note_begins()
    {
        var (code, output, _) = Show(
            "--as times --tempo 120 --count-in 1 --repeat 3 --from-tempo 60 --bars 2"
        );
        var times = JsonNode.Parse(output)!;

        Assert.Equal(0, code);
        Assert.Equal([60.0, 90, 120], times["passes"]!.AsArray().Select(pass => (double)pass!["fromBpm"]!));
        Assert.Equal(3 * 16, times["notes"]!.AsArray().Count);
        Assert.Equal((16, 4.1), ((int)times["notes"]![0]!["index"]!, (double)times["notes"]![0]!["onsetS"]!));
    }

    [Fact]
    public void Midi_repeats_as_the_sound_does()
    {
        Show("--as midi --tempo 120");
        var once = _session.Bytes.ToArray().Length;
        Show("--as midi --tempo 120 --repeat 3 --from-tempo 60 --tempo-way in-turn");

        Assert.InRange(_session.Bytes.ToArray().Length, (2 * once) + 1, 4 * once);
    }

    [Theory]
    [InlineData("", 2)]
    [InlineData("--sound nylon", 2)]
    [InlineData("--click beats", 3)]
    [InlineData("--click beats --drone root --count-in 1", 4)]
    [InlineData("--sound none --backing Am7", 4)]
    [InlineData("--count-in 1", 3)]
    public void Midi_has_a_track_for_each_part_that_sounds(string words, int tracks)
    {
        var (code, _, error) = Show($"--as midi --tempo 120 {words}".TrimEnd());
        var file = _session.Bytes.ToArray();

        Assert.Equal((0, ""), (code, error));
        Assert.Equal("MThd", Encoding.ASCII.GetString(file, 0, 4));
        Assert.Equal(tracks, BinaryPrimitives.ReadInt16BigEndian(file.AsSpan(10)));
    }

    [Theory]
    [InlineData("--tempo 0", "--tempo: ")]
    [InlineData("--tempo 100000", "--tempo: ")]
    [InlineData("--tempo 5", "--tempo: 5 is no tempo; 10 to 1000 beats a minute")]
    [InlineData("--from-tempo 0", "--from-tempo: 0 is no tempo; 10 to 1000 beats a minute")]
    [InlineData("--from-tempo fast", "--from-tempo: 'fast' is no tempo; 10 to 1000 beats a minute")]
    [InlineData("--from-tempo 60 --tempo-way up", "--tempo-way: unknown way 'up'")]
    [InlineData("--tempo-way ladder", "--tempo-way: no tempo to begin with; --from-tempo as well")]
    [InlineData("--tempo 10 --repeat 500", "the music lasts more than an hour; a faster tempo, fewer bars")]
    [InlineData("--repeat 0", "--repeat: '0' can't be used; a whole number from 1 to 500")]
    [InlineData("--repeat 99999999999", "--repeat: '99999999999' can't be used")]
    [InlineData("--count-in 9", "--count-in: '9' can't be used; a whole number from 0 to 8")]
    [InlineData("--bars 9", "--bars: no bars 9 to 9; bars within 1 to 3")]
    [InlineData("--bars 2-1", "--bars: '2-1' are no bars; a bar or two, such as 3-4")]
    [InlineData("--bars 1-2147483647", "--bars: no bars 1 to 2147483647; bars within 1 to 3")]
    [InlineData("--manner loud", "--manner: unknown manner 'loud'")]
    [InlineData("--sound steal", "--sound: unknown sound 'steal'; did you mean 'steel'")]
    [InlineData(
        "--sound none",
        "--sound: nothing is left to be heard; a sound, a click, a backing or a drone"
    )]
    [InlineData("--click often", "--click: unknown click 'often'")]
    [InlineData("--click beats --click-gap 0/1", "--click-gap: '0/1' is no gap")]
    [InlineData("--click-gap 2/1", "--click-gap: no click to leave out; --click as well")]
    [InlineData("--backing H7", "--backing bar 1: 'H7' is no chord; a chord such as Am7, D7 or C/E")]
    [InlineData("--groove swung", "--groove: no chords to play; --backing as well")]
    [InlineData("--backing C --groove waltz", "--groove: unknown groove 'waltz'")]
    [InlineData("--meter 12/8 --backing C --groove straight", "--groove: the beats of 12/8 divide in three")]
    [InlineData("--drone H", "--drone: 'H' is no note; a note such as A or C#, or root for a scale's")]
    [InlineData("--bits 12", "--bits: unknown number of bits '12'")]
    [InlineData("--rate 8000", "--rate: unknown sample rate '8000'")]
    public void What_can_t_be_heard_is_one_clear_line(string words, string expected)
    {
        var (code, output, error) = Show($"--as wav {words}");

        Assert.Equal((2, ""), (code, output));
        Assert.Contains(expected, error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd().Split('\n'));
        Assert.Equal(0, _session.Bytes.Length);
    }

    [Fact]
    public void A_file_that_can_t_be_written_is_one_clear_line()
    {
        var (code, _, error) = Show("--as wav -o /nowhere/at/all.wav");

        Assert.Equal(1, code);
        Assert.Contains("/nowhere/at/all.wav", error, StringComparison.Ordinal);
        Assert.Single(error.TrimEnd().Split('\n'));
    }

    [Fact]
    public void A_line_of_three_hours_is_refused_at_once()
    {
        var idea = JsonNode.Parse(_session.Run("show", "groups-of-five-up", "--as", "json").Out)!;
        idea["movement"] = new JsonObject { ["repeat"] = 450 };
        var file = _session.Write("long.json", idea.ToJsonString());

        var (code, _, error) = _session.Run("show", file, "--as", "wav", "--tempo", "25");

        Assert.Equal(2, code);
        Assert.Contains("the music lasts more than an hour", error, StringComparison.Ordinal);
    }

    public void Dispose() => _session.Dispose();

    private (int Code, string Out, string Error) Show(string words) =>
        _session.Run(["show", "groups-of-five-up", .. words.Split(' ')]);

    private static int Whole(byte[] wav, int at) => BinaryPrimitives.ReadInt32LittleEndian(wav.AsSpan(at));

    private static int Half(byte[] wav, int at) => BinaryPrimitives.ReadInt16LittleEndian(wav.AsSpan(at));
}
