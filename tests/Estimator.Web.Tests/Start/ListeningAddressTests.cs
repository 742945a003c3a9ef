using Estimator.Web.Start;
using Microsoft.Extensions.Configuration;

namespace Estimator.Web.Tests.Start;

public sealed class ListeningAddressTests
{
    [Theory]
    [InlineData("http://127.0.0.1:5210")]
    [InlineData("http://localhost:80;http://[::1]:5210")]
    [InlineData("https://127.0.0.2:5211")]
    public void Refusal_LoopbackOnly_None(string urls) => Assert.Null(ListeningAddress.Refusal(Settings(("urls", urls))));

    [Theory]
    [InlineData("urls", "http://0.0.0.0:5210")]
    [InlineData("urls", "http://*:5210")]
    [InlineData("urls", "http://127.0.0.1:5210;http://192.168.1.4:5210")]
    [InlineData("urls", "http://example.test")]
    [InlineData("http_ports", "8080")]
    [InlineData("Kestrel:Endpoints:Open:Url", "http://127.0.0.1:1")]
    public void Refusal_AnotherAddressEmbedded_NamesWhatIsAccepted(string key, string value)
    {
        var sentence = ListeningAddress.Refusal(Settings((key, value), (ListeningAddress.TrustedSetting, "true")));
        Assert.Contains("127.0.0.1, [::1] or localhost is accepted", sentence, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("true", true)]
    [InlineData("false", false)]
    public void Refusal_ServerDatabase_OpenOnlyWhereTrusted(string trusted, bool open)
    {
        var settings = Settings(("urls", "http://0.0.0.0:8080"), ("ConnectionStrings:Estimator", "Host=db"), (ListeningAddress.TrustedSetting, trusted));
        Assert.Equal(open, ListeningAddress.Refusal(settings) is null);
    }

    private static IConfiguration Settings(params (string Key, string Value)[] values) =>
        new ConfigurationBuilder().AddInMemoryCollection(values.Select(v => KeyValuePair.Create(v.Key, (string?)v.Value))).Build();
}
