using System.Globalization;
using System.Text;
using System.Xml;

namespace Passagework.Notation;

/// <summary>Elements in the order in which they are written; lines end in a line feed.</summary>
internal sealed class XmlPage : IDisposable
{
    private readonly StringBuilder _text = new("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
    private readonly XmlWriter _writer;

    public XmlPage() =>
        _writer = XmlWriter.Create(
            _text,
            new XmlWriterSettings
            {
                Indent = true,
                NewLineChars = "\n",
                OmitXmlDeclaration = true,
            }
        );

    public void DocType(string root, string publicId, string systemId) =>
        _writer.WriteDocType(root, publicId, systemId, null);

    /// <summary>Opens an element with attributes given as name, value, name, value; an empty value leaves one out.</summary>
    public void Open(string name, params ReadOnlySpan<string> attributes)
    {
        _writer.WriteStartElement(name);
        for (var at = 0; at < attributes.Length; at += 2)
        {
            if (attributes[at + 1].Length > 0)
            {
                _writer.WriteAttributeString(attributes[at], attributes[at + 1]);
            }
        }
    }

    public void Close() => _writer.WriteEndElement();

    /// <summary>An element without content.</summary>
    public void Mark(string name, params ReadOnlySpan<string> attributes)
    {
        Open(name, attributes);
        Close();
    }

    public void Text(string name, string text, params ReadOnlySpan<string> attributes)
    {
        Open(name, attributes);
        _writer.WriteString(Legal(text));
        Close();
    }

    public void Number(string name, long number) => Text(name, number.ToString(CultureInfo.InvariantCulture));

    public override string ToString()
    {
        _writer.Flush();
        return $"{_text}\n";
    }

    public void Dispose() => _writer.Dispose();

    // What XML can't hold (halves of surrogate pairs, U+FFFE) is left out.
    private static string Legal(string text)
    {
        if (text.All(XmlConvert.IsXmlChar))
        {
            return text;
        }

        var legal = new StringBuilder();
        foreach (var rune in text.EnumerateRunes())
        {
            if (rune.Value != 0xFFFD && (rune.Value > 0xFFFF || XmlConvert.IsXmlChar((char)rune.Value)))
            {
                legal.Append(rune);
            }
        }

        return legal.ToString();
    }
}
