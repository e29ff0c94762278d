using System.Xml;

namespace Passagework.Notation;

/// <summary>Hands bytes of XML on until a tag is longer than any score's: many attributes cost their number squared.</summary>
internal sealed class TagGuard(Stream bytes) : Stream
{
    /// <summary>Bytes of a tag; real ones have some hundred.</summary>
    public const int Longest = 1 << 16;

    private const byte Opens = (byte)'<';
    private const byte Closes = (byte)'>';
    private bool _isOpen;
    private int _length;

    public override bool CanRead => true;

    public override bool CanSeek => false;

    public override bool CanWrite => false;

    public override long Length => throw new NotSupportedException();

    public override long Position
    {
        get => throw new NotSupportedException();
        set => throw new NotSupportedException();
    }

    public override int Read(byte[] buffer, int offset, int count) => Read(buffer.AsSpan(offset, count));

    public override int Read(Span<byte> buffer)
    {
        var read = bytes.Read(buffer);
        Look(buffer[..read]);
        return read;
    }

    public override void Flush() { }

    public override long Seek(long offset, SeekOrigin origin) => throw new NotSupportedException();

    public override void SetLength(long value) => throw new NotSupportedException();

    public override void Write(byte[] buffer, int offset, int count) => throw new NotSupportedException();

    private void Look(ReadOnlySpan<byte> read)
    {
        while (!read.IsEmpty)
        {
            var next = read.IndexOf(_isOpen ? Closes : Opens);
            if (_isOpen && (_length += next < 0 ? read.Length : next) > Longest)
            {
                throw new XmlException($"A tag is longer than {Longest >> 10} KB.");
            }

            if (next < 0)
            {
                return;
            }

            (_isOpen, _length) = (!_isOpen, 0);
            read = read[(next + 1)..];
        }
    }
}
