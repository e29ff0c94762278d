using System.Collections.Immutable;
using System.Text.Json.Nodes;
using Passagework.Foundation;

namespace Passagework.Exercises;

/// <summary>Puts fields into a JSON object that say something.</summary>
internal static class JsonWriting
{
    extension(JsonObject fields)
    {
        /// <summary>A field, left out when there is no value.</summary>
        public void Put(string name, JsonNode? value)
        {
            if (value is not null)
            {
                fields[name] = value;
            }
        }

        /// <summary>An object, left out when it is empty.</summary>
        public void PutFilled(string name, JsonObject value)
        {
            if (value.Count > 0)
            {
                fields[name] = value;
            }
        }

        /// <summary>A field, left out when it has its usual value.</summary>
        public void PutUnless<T>(string name, T value, T usual)
        {
            if (!EqualityComparer<T>.Default.Equals(value, usual))
            {
                fields[name] = JsonValue.Create(value);
            }
        }

        /// <summary>A word, left out when it is the usual one.</summary>
        public void PutUnless<T>(string name, T value, T usual, WordList<T> words)
            where T : struct
        {
            if (!EqualityComparer<T>.Default.Equals(value, usual))
            {
                fields[name] = words.Of(value);
            }
        }
    }

    extension<T>(ImmutableArray<T> items)
    {
        /// <summary>The entries as a JSON list.</summary>
        public JsonArray ToList() => new([.. items.Select(item => (JsonNode?)JsonValue.Create(item))]);
    }
}
