using System.Buffers.Binary;

namespace Passagework.Tests.Sound.Measuring;

/// <summary>16-bit WAV, written mono and read back as the mean of its channels.</summary>
internal static class WavFile
{
    private const int HeaderBytes = 44;

    public static void Write(string path, ReadOnlySpan<float> samples, int rate)
    {
        var bytes = new byte[HeaderBytes + (2 * samples.Length)];
        "RIFF"u8.CopyTo(bytes);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(4), bytes.Length - 8);
        "WAVEfmt "u8.CopyTo(bytes.AsSpan(8));
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(16), 16);
        BinaryPrimitives.WriteInt16LittleEndian(bytes.AsSpan(20), 1);
        BinaryPrimitives.WriteInt16LittleEndian(bytes.AsSpan(22), 1);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(24), rate);
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(28), 2 * rate);
        BinaryPrimitives.WriteInt16LittleEndian(bytes.AsSpan(32), 2);
        BinaryPrimitives.WriteInt16LittleEndian(bytes.AsSpan(34), 16);
        "data"u8.CopyTo(bytes.AsSpan(36));
        BinaryPrimitives.WriteInt32LittleEndian(bytes.AsSpan(40), 2 * samples.Length);
        for (var i = 0; i < samples.Length; i++)
        {
            var value = (short)Math.Round(Math.Clamp(samples[i], -1, 1) * short.MaxValue);
            BinaryPrimitives.WriteInt16LittleEndian(bytes.AsSpan(HeaderBytes + (2 * i)), value);
        }

        File.WriteAllBytes(path, bytes);
    }

    /// <summary>The samples of a stereo file with a plain header of 44 bytes.</summary>
    public static float[] ReadStereo(string path)
    {
        var bytes = File.ReadAllBytes(path);
        var samples = new float[(bytes.Length - HeaderBytes) / 4];
        for (var i = 0; i < samples.Length; i++)
        {
            var left = BinaryPrimitives.ReadInt16LittleEndian(bytes.AsSpan(HeaderBytes + (4 * i)));
            var right = BinaryPrimitives.ReadInt16LittleEndian(bytes.AsSpan(HeaderBytes + (4 * i) + 2));
            samples[i] = (left + right) / 65536f;
        }

        return samples;
    }
}
