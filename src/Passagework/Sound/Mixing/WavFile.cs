using System.Buffers.Binary;

namespace Passagework.Sound.Mixing;

/// <summary>How samples are written.</summary>
public enum SampleFormat
{
    /// <summary>Whole numbers of 16 bits.</summary>
    Pcm16,

    /// <summary>Whole numbers of 24 bits.</summary>
    Pcm24,

    /// <summary>Floating-point numbers of 32 bits.</summary>
    Float32,
}

/// <summary>A sound file as RIFF WAVE, written block by block.</summary>
/// <remarks>Microsoft and IBM, "Multimedia Programming Interface and Data Specifications 1.0", 1991.</remarks>
/// <param name="sampleRate">Samples a second.</param>
/// <param name="channels">1 or 2.</param>
/// <param name="format">How samples are written.</param>
public sealed class WavFile(int sampleRate, int channels, SampleFormat format)
{
    private const int Block = 4096;
    private const int HeaderBytes = 44;
    private const int FloatExtraBytes = 14;

    /// <summary>Bytes of one sample of one channel.</summary>
    public int SampleBytes =>
        format switch
        {
            SampleFormat.Pcm16 => 2,
            SampleFormat.Pcm24 => 3,
            _ => 4,
        };

    /// <summary>Writes a whole file.</summary>
    /// <param name="to">Where to.</param>
    /// <param name="samples">Samples of each channel.</param>
    /// <param name="render">Gives the interleaved samples.</param>
    /// <exception cref="ArgumentOutOfRangeException">More than a file of this kind can hold, 4 GB.</exception>
    public void Write(Stream to, long samples, VoiceRenderer render)
    {
        ArgumentOutOfRangeException.ThrowIfGreaterThan(
            samples,
            (uint.MaxValue - 100) / (channels * SampleBytes)
        );
        to.Write(Header((uint)(samples * channels * SampleBytes)));
        var block = new float[Block * channels];
        var bytes = new byte[block.Length * SampleBytes];
        for (long done = 0; done < samples; done += Block)
        {
            var count = (int)Math.Min(Block, samples - done) * channels;
            render(block.AsSpan(0, count), done);
            Encode(block.AsSpan(0, count), bytes);
            to.Write(bytes, 0, count * SampleBytes);
        }

        if (samples * channels * SampleBytes % 2 != 0)
        {
            to.WriteByte(0);
        }
    }

    private byte[] Header(uint dataBytes)
    {
        var isFloat = format == SampleFormat.Float32;
        var header = new byte[HeaderBytes + (isFloat ? FloatExtraBytes : 0)];
        var at = header.AsSpan();
        "RIFF"u8.CopyTo(at);
        BinaryPrimitives.WriteUInt32LittleEndian(
            at[4..],
            (uint)header.Length - 8 + dataBytes + (dataBytes & 1)
        );
        "WAVEfmt "u8.CopyTo(at[8..]);
        BinaryPrimitives.WriteInt32LittleEndian(at[16..], isFloat ? 18 : 16);
        BinaryPrimitives.WriteInt16LittleEndian(at[20..], (short)(isFloat ? 3 : 1));
        BinaryPrimitives.WriteInt16LittleEndian(at[22..], (short)channels);
        BinaryPrimitives.WriteInt32LittleEndian(at[24..], sampleRate);
        BinaryPrimitives.WriteInt32LittleEndian(at[28..], sampleRate * channels * SampleBytes);
        BinaryPrimitives.WriteInt16LittleEndian(at[32..], (short)(channels * SampleBytes));
        BinaryPrimitives.WriteInt16LittleEndian(at[34..], (short)(8 * SampleBytes));
        if (isFloat)
        {
            "fact"u8.CopyTo(at[38..]);
            BinaryPrimitives.WriteInt32LittleEndian(at[42..], 4);
            BinaryPrimitives.WriteUInt32LittleEndian(at[46..], dataBytes / (uint)(channels * SampleBytes));
        }

        "data"u8.CopyTo(at[^8..]);
        BinaryPrimitives.WriteUInt32LittleEndian(at[^4..], dataBytes);
        return header;
    }

    private void Encode(ReadOnlySpan<float> samples, Span<byte> bytes)
    {
        for (var i = 0; i < samples.Length; i++)
        {
            var to = bytes[(i * SampleBytes)..];
            if (format == SampleFormat.Float32)
            {
                BinaryPrimitives.WriteSingleLittleEndian(to, samples[i]);
                continue;
            }

            var most = format == SampleFormat.Pcm16 ? short.MaxValue : 0x7F_FFFF;
            var whole = (int)Math.Round(Math.Clamp((double)samples[i], -1, 1) * most);
            for (var part = 0; part < SampleBytes; part++)
            {
                to[part] = unchecked((byte)(whole >> (8 * part)));
            }
        }
    }
}
