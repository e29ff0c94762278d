using System.Net;

namespace Passagework.Studio.Hosting;

/// <summary>Whether addresses can be reached from this machine alone.</summary>
internal static class Loopback
{
    /// <summary>Whether every address of a list with ; between is one of this machine.</summary>
    public static bool IsOnly(string urls) =>
        urls.Split(';').All(url => Uri.TryCreate(url, UriKind.Absolute, out var uri) && Is(uri.Host));

    private static bool Is(string host) =>
        host == "localhost"
        || (IPAddress.TryParse(host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));
}
