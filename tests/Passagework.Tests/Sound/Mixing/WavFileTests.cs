using System.Buffers.Binary;
using System.Globalization;
using Passagework.Sound.Mixing;
using Passagework.Tests.Outside;

namespace Passagework.Tests.Sound.Mixing;

/// <summary>Sound files read back by an outside program (Debian package "ffmpeg").</summary>
public sealed class WavFileTests : IDisposable
{
    private readonly string _folder = Directory.CreateTempSubdirectory("passagework-wav-").FullName;

    [Theory]
    [InlineData(SampleFormat.Pcm16, 1, 44_100, "pcm_s16le", 1 / 32767.0)]
    [InlineData(SampleFormat.Pcm16, 2, 48_000, "pcm_s16le", 1 / 32767.0)]
    [InlineData(SampleFormat.Pcm24, 2, 44_100, "pcm_s24le", 1 / 8388607.0)]
    [InlineData(SampleFormat.Pcm24, 1, 48_000, "pcm_s24le", 1 / 8388607.0)]
    [InlineData(SampleFormat.Float32, 2, 48_000, "pcm_f32le", 1e-9)]
    public void Samples_come_back_through_an_outside_reader(
        SampleFormat format,
        int channels,
        int sampleRate,
        string codec,
        double step
    )
    {
        // An odd number of samples: a single 24-bit channel needs a byte of padding.
        var sound = Sound(5001 * channels);
        var file = Written(format, channels, sampleRate, sound);

        var said = OutsideProgram.Run(
            "ffprobe",
            ["-v", "error", "-show_entries", "stream=codec_name,sample_rate,channels", "-of", "csv=p=0", file]
        );
        var raw = Path.Combine(_folder, "raw");
        OutsideProgram.Run("ffmpeg", ["-v", "error", "-i", file, "-f", "f32le", "-y", raw]);
        var back = File.ReadAllBytes(raw);

        Assert.Equal(
            string.Create(CultureInfo.InvariantCulture, $"{codec},{sampleRate},{channels}"),
            said.Trim()
        );
        Assert.Equal(sound.Length * 4, back.Length);
        for (var i = 0; i < sound.Length; i++)
        {
            var read = BinaryPrimitives.ReadSingleLittleEndian(back.AsSpan(4 * i));
            // The reader divides by one more than the writer multiplies by.
            Assert.Equal(sound[i], read, 1.6 * step);
        }
    }

    [Theory]
    [InlineData(SampleFormat.Pcm16, 44 + 6)]
    [InlineData(SampleFormat.Pcm24, 44 + 10)]
    [InlineData(SampleFormat.Float32, 58 + 12)]
    public void Chunks_say_their_own_length(SampleFormat format, int length)
    {
        var bytes = File.ReadAllBytes(Written(format, 1, 44_100, [0.25f, -2, 2]));

        Assert.Equal(length, bytes.Length);
        Assert.Equal(length - 8, BinaryPrimitives.ReadInt32LittleEndian(bytes.AsSpan(4)));
    }

    [Fact]
    public void Samples_beyond_full_scale_are_held_there()
    {
        var bytes = File.ReadAllBytes(Written(SampleFormat.Pcm16, 1, 44_100, [-2, 2]));

        Assert.Equal([0x01, 0x80, 0xFF, 0x7F], bytes[44..]);
    }

    [Fact]
    public void More_than_4_GB_is_refused_before_anything_is_written()
    {
        using var stream = new MemoryStream();
        var wav = new WavFile(44_100, 2, SampleFormat.Float32);

        Assert.Throws<ArgumentOutOfRangeException>(() => wav.Write(stream, 1L << 29, (_, _) => { }));
        Assert.Equal(0, stream.Length);
    }

    public void Dispose() => Directory.Delete(_folder, recursive: true);

    private static float[] Sound(int length) =>
        [.. Enumerable.Range(0, length).Select(i => 0.8f * MathF.Sin(0.37f * i))];

    private string Written(SampleFormat format, int channels, int sampleRate, float[] sound)
    {
        var file = Path.Combine(_folder, "sound.wav");
        using var stream = File.Create(file);
        new WavFile(sampleRate, channels, format).Write(
            stream,
            sound.Length / channels,
            (into, first) => sound.AsSpan((int)first * channels, into.Length).CopyTo(into)
        );
        return file;
    }
}
