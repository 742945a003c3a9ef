using AngleSharp.Dom;
using Bunit;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Tests.Entries;

/// <summary>Finds fields by the words that a reader goes by, and types into them.</summary>
internal static class EntryFields
{
    internal static IElement Field(IRenderedComponent<IComponent> part, string label)
    {
        var named = part.FindAll("input, select").FirstOrDefault(f => f.GetAttribute("aria-label") == label);
        if (named is not null)
        {
            return named;
        }

        // A tick stands inside its label; any other field is named by it.
        var words = part.FindAll("label").First(l => l.TextContent == label);
        return words.QuerySelector("input") ?? part.Find($"#{words.GetAttribute("for")}");
    }

    // Found and typed into in one go, so that a new estimate can't draw the field anew in between.
    internal static Task StateAsync(IRenderedComponent<IComponent> part, string label, object typed) =>
        part.InvokeAsync(() => Field(part, label).ChangeAsync(new ChangeEventArgs { Value = typed }));

    internal static Task PressAsync(IRenderedComponent<IComponent> part, string words) =>
        part.InvokeAsync(() => part.FindAll("button.lk").First(b => b.TextContent == words).ClickAsync(new()));
}
