using Estimator.Data.Companies;
using Estimator.Engine.House;
using Estimator.Web.Contracts;
using Estimator.Web.Figures;
using Estimator.Web.Jobs;
using Microsoft.AspNetCore.Components;

namespace Estimator.Web.Settings;

/// <summary>What the company prints on its papers, and the rates and terms of a new job.</summary>
public sealed partial class SettingsPage
{
    private const int Longest = 2000;

    private readonly Dictionary<string, string> _problems = [];
    private readonly Dictionary<string, string> _typed = [];
    private CompanySettings? _settings;
    private string? _other;
    private string _said = "";

    [Inject]
    private CompanyStore Store { get; set; } = default!;

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => LoadAsync();

    private async Task LoadAsync()
    {
        _settings = await Store.LoadAsync();
        (_other, _said) = (null, "");
        _problems.Clear();
        _typed.Clear();
    }

    // What was typed wrong stays in its field until it is mended.
    private string Shown(RateField rate, CompanySettings settings) =>
        _typed.TryGetValue(rate.Key, out var typed) ? typed : rate.Get(settings.Rates) is { } value ? American.Number(value, 4) : "";

    private void Take(RateField rate, string? text)
    {
        var read = rate.Take(_settings!.Rates, text);
        _problems.Remove(rate.Key);
        _typed.Remove(rate.Key);
        if (read.Ok)
        {
            _settings = _settings with { Rates = read.Value };
        }
        else
        {
            (_problems[rate.Key], _typed[rate.Key]) = (read.Problem, text ?? "");
        }
    }

    private string Shown(TermSetting term, CompanySettings settings) => _typed.TryGetValue(term.Field, out var typed) ? typed : term.Text(Started(settings));

    // Read and judged as in a job, so that a new one takes all that is stored here.
    private void Take(TermSetting term, string? text)
    {
        var started = Started(_settings!);
        var change = term.Change(started, text ?? "");
        _problems.Remove(term.Field);
        _typed.Remove(term.Field);
        if (change.Ok)
        {
            _settings = _settings! with { Payment = change.Value(started).Payment ?? new PaymentTerms() };
        }
        else
        {
            (_problems[term.Field], _typed[term.Field]) = (change.Problem, text ?? "");
        }
    }

    private static Job Started(CompanySettings settings) => JobStarts.Blank("New job") with { Payment = settings.Payment };

    private void TakeBasis(ChangeEventArgs e) =>
        _settings = _settings! with { Rates = _settings.Rates with { ProfitBasis = Enum.TryParse<ProfitBasis>(e.Value as string, out var basis) ? basis : null } };

    private void TakeAddress(string? text) => _settings = _settings! with
    {
        AddressLines = [.. (text ?? "").Split('\n', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries)],
    };

    // An act does not draw its page anew by itself.
    private async Task SaveAsync()
    {
        await TrySaveAsync();
        StateHasChanged();
    }

    private async Task TrySaveAsync()
    {
        (_other, _said) = (null, "");
        if (_settings is not { } settings)
        {
            return;
        }

        if (_problems.Count > 0)
        {
            _other = $"Nothing was saved: {American.Count(_problems.Count, "rate or term")} below can't be read.";
            return;
        }

        var saving = await Store.SaveAsync(settings);
        if (saving.Saved)
        {
            (_settings, _said) = (saving.Stored, "Saved");
        }
        else
        {
            _other = "Somebody else saved the settings meanwhile. Nothing of yours was written, and nothing of theirs is lost.";
        }
    }
}
