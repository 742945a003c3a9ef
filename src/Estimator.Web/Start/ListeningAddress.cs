using System.Net;

namespace Estimator.Web.Start;

/// <summary>Decides where the pages may be reached. There are no accounts yet, so nobody but the machine's own user may reach them.</summary>
public static class ListeningAddress
{
    /// <summary>The address where none is stated.</summary>
    public const string Default = "http://127.0.0.1:5210";

    /// <summary>Setting that lets a server behind its own door listen on other addresses; read with PostgreSQL only.</summary>
    public const string TrustedSetting = "trusted-network";

    /// <summary>Why the program must not start with these settings; null when it may.</summary>
    public static string? Refusal(IConfiguration settings)
    {
        var place = DataPlace.Of(settings);
        if (!place.Embedded && settings.GetValue<bool>(TrustedSetting))
        {
            return null;
        }

        if (settings.GetSection("Kestrel:Endpoints").GetChildren().Any())
        {
            return Sentence("addresses under Kestrel:Endpoints", place);
        }

        foreach (var ports in new[] { "http_ports", "https_ports" })
        {
            if (settings[ports] is { Length: > 0 } stated)
            {
                return Sentence($"{ports} {stated}, which means every address of this machine", place);
            }
        }

        return Stated(settings).FirstOrDefault(a => !IsLoopback(a)) is { } other ? Sentence(other, place) : null;
    }

    /// <summary>The stated addresses, or the default.</summary>
    public static string[] Stated(IConfiguration settings) =>
        settings["urls"] is { Length: > 0 } urls ? urls.Split(';', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries) : [Default];

    private static bool IsLoopback(string address)
    {
        if (!Uri.TryCreate(address, UriKind.Absolute, out var uri))
        {
            return false;
        }

        return uri.Host is "localhost" || (IPAddress.TryParse(uri.Host.Trim('[', ']'), out var ip) && IPAddress.IsLoopback(ip));
    }

    private static string Sentence(string found, DataPlace place) => place.Embedded
        ? $"Found {found}. Without accounts the pages are for this machine alone: 127.0.0.1, [::1] or localhost is accepted, such as --urls {Default}."
        : $"Found {found}. There are no accounts: 127.0.0.1, [::1] or localhost is accepted, or --{TrustedSetting} true where only your own people can reach the server.";
}
