using System.Globalization;
using System.Text;
using System.Xml;

namespace Passagework.Notation;

/// <summary>Walks down an XML file once, element by element; nothing outside the file is ever opened.</summary>
/// <remarks>
/// A document type is passed over without being read, so no entity of its own is known. An element that nobody enters
/// or takes the text of is skipped. Everything wrong with the XML is an <see cref="XmlException"/>, caught at the door.
/// </remarks>
internal sealed class XmlWalk : IDisposable
{
    /// <summary>Elements inside each other; real scores need about ten.</summary>
    public const int Deepest = 64;

    private const int LongestText = 1000;
    private const int NoChildren = -1;
    private readonly XmlReader _reader;

    // Whether the reader stands on the start of an element that nobody has dealt with.
    private bool _pending;

    /// <summary>Walks bytes, in the encoding that they or their first line name.</summary>
    public XmlWalk(Stream stream, int mostCharacters) =>
        _reader = XmlReader.Create(stream, Settings(mostCharacters));

    /// <summary>Walks text.</summary>
    public XmlWalk(TextReader text, int mostCharacters) =>
        _reader = XmlReader.Create(text, Settings(mostCharacters));

    /// <summary>Such as <c>line 3, column 7</c>.</summary>
    public string Spot
    {
        get
        {
            var info = (IXmlLineInfo)_reader;
            return string.Create(
                CultureInfo.InvariantCulture,
                $"line {info.LineNumber}, column {info.LinePosition}"
            );
        }
    }

    /// <summary>Goes to the outermost element and gives its name.</summary>
    public string Root()
    {
        _reader.MoveToContent();
        _pending = true;
        return _reader.LocalName;
    }

    /// <summary>An attribute of the element just found; empty when it has none of that name.</summary>
    public string Attribute(string name) => _reader.GetAttribute(name) ?? "";

    /// <summary>Goes into the element just found; the answer is what <see cref="Next"/> asks for.</summary>
    public int Enter()
    {
        _pending = false;
        return _reader.IsEmptyElement ? NoChildren : _reader.Depth;
    }

    /// <summary>Finds the next child of an entered element; false when there is none.</summary>
    public bool Next(int depth, out string name)
    {
        name = "";
        if (depth == NoChildren)
        {
            return false;
        }

        if (_pending)
        {
            Skip();
        }

        while (Read())
        {
            if (_reader.NodeType == XmlNodeType.Element)
            {
                _pending = true;
                name = _reader.LocalName;
                return true;
            }

            if (_reader.NodeType == XmlNodeType.EndElement && _reader.Depth == depth)
            {
                return false;
            }
        }

        return false;
    }

    /// <summary>The text of the element just found, without that of elements inside; at most a thousand letters.</summary>
    public string Text()
    {
        _pending = false;
        if (_reader.IsEmptyElement)
        {
            return "";
        }

        var depth = _reader.Depth;
        string? whole = null;
        StringBuilder? more = null;
        while (Read() && !(_reader.NodeType == XmlNodeType.EndElement && _reader.Depth == depth))
        {
            if (_reader.NodeType is not (XmlNodeType.Text or XmlNodeType.CDATA) || _reader.Depth != depth + 1)
            {
                continue;
            }

            if (whole is null)
            {
                whole = _reader.Value;
            }
            else
            {
                more ??= new StringBuilder(whole);
                more.Append(more.Length < LongestText ? _reader.Value : "");
            }
        }

        var text = more?.ToString() ?? whole ?? "";
        return (text.Length <= LongestText ? text : text[..LongestText]).Trim();
    }

    public void Dispose() => _reader.Dispose();

    private static XmlReaderSettings Settings(int mostCharacters) =>
        new()
        {
            DtdProcessing = DtdProcessing.Ignore,
            XmlResolver = null,
            IgnoreComments = true,
            IgnoreProcessingInstructions = true,
            IgnoreWhitespace = true,
            MaxCharactersInDocument = mostCharacters,
            MaxCharactersFromEntities = LongestText,
        };

    // Also what is skipped costs the reader memory for each level.
    private bool Read()
    {
        var isMore = _reader.Read();
        if (_reader.Depth > Deepest)
        {
            var info = (IXmlLineInfo)_reader;
            throw new XmlException("Elements are nested too deep.", null, info.LineNumber, info.LinePosition);
        }

        return isMore;
    }

    private void Skip()
    {
        _pending = false;
        if (_reader.IsEmptyElement)
        {
            return;
        }

        var depth = _reader.Depth;
        while (Read() && !(_reader.NodeType == XmlNodeType.EndElement && _reader.Depth == depth))
        {
            // Nothing inside is of use.
        }
    }
}
