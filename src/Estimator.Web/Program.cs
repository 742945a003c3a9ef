using Estimator.Web.Start;

var builder = WebApplication.CreateBuilder(new WebApplicationOptions { Args = args, ContentRootPath = AppContext.BaseDirectory });
if (ListeningAddress.Refusal(builder.Configuration) is { } sentence)
{
    await Console.Error.WriteLineAsync(sentence);
    return 2;
}

builder.AddEstimatorWeb();
var app = builder.Build();
app.UseEstimatorWeb();
return await StartUp.RunAsync(app);

/// <summary>Composes and starts the pages.</summary>
public partial class Program;
