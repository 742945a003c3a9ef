using Microsoft.Playwright;

namespace Estimator.Browser.Tests;

/// <summary>
/// A person's hands on keyboard and mouse. Each act is done in the page and counted, so that a journey's time follows from the acts that the test really made.
/// </summary>
/// <remarks>
/// Keystroke-level model: Card, Moran and Newell, "The keystroke-level model for user performance time with interactive systems", Communications of the ACM 23(7),
/// 1980, 396-410; operators as a university's course page quotes them from the same authors' book of 1983. Waiting for the program is not in it: the test
/// waits in its own time.
/// </remarks>
internal sealed class Hands(IPage page)
{
    // Seconds. A non-secretary who types 40 words a minute; a mouse button; pointing; moving a hand over; getting ready for an act.
    private const double Key = 0.28;
    private const double Button = 0.2;
    private const double Point = 1.1;
    private const double Home = 0.4;
    private const double Mind = 1.35;

    private const string Shifted = "\"!@#$%^&*()_+{}|:<>?~";

    private bool _onKeys;

    internal int Keys { get; private set; }

    internal int Clicks { get; private set; }

    internal double Seconds { get; private set; }

    internal async Task ClickAsync(ILocator target)
    {
        await target.ClickAsync();
        Move(toKeys: false);
        Clicks++;
        Seconds += Mind + Point + Button;
    }

    /// <summary>Types into what has the focus.</summary>
    internal async Task TypeAsync(string text)
    {
        await page.Keyboard.TypeAsync(text);
        Move(toKeys: true);
        var keys = text.Length + text.Count(c => char.IsUpper(c) || Shifted.Contains(c, StringComparison.Ordinal));
        Keys += keys;
        Seconds += Mind + keys * Key;
    }

    /// <summary>Presses a key that belongs to what was typed before, such as Enter.</summary>
    internal async Task PressAsync(string key)
    {
        await page.Keyboard.PressAsync(key);
        Move(toKeys: true);
        Keys += key.Count(c => c == '+') + 1;
        Seconds += (key.Count(c => c == '+') + 1) * Key;
    }

    /// <summary>Clicks into a field, puts a text in place of what stands there, and leaves it.</summary>
    internal async Task FillAsync(ILocator field, string text)
    {
        await ClickAsync(field);
        await PressAsync("Control+a");
        await TypeAsync(text);
        await PressAsync("Tab");
    }

    internal string Told => FormattableString.Invariant($"{Keys} keys, {Clicks} clicks, {Seconds:0} s");

    private void Move(bool toKeys)
    {
        Seconds += _onKeys == toKeys ? 0 : Home;
        _onKeys = toKeys;
    }
}
