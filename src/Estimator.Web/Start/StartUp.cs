using Estimator.Data.Databases;
using Microsoft.AspNetCore.Connections;
using Microsoft.AspNetCore.Hosting.Server;
using Microsoft.AspNetCore.Hosting.Server.Features;

namespace Estimator.Web.Start;

/// <summary>Starts the pages and says in plain words where they are, or why they are not.</summary>
internal static class StartUp
{
    internal static async Task<int> RunAsync(WebApplication app)
    {
        try
        {
            await using (var scope = app.Services.CreateAsyncScope())
            {
                await scope.ServiceProvider.GetRequiredService<DatabaseStart>().RunAsync();
            }

            await app.StartAsync();
        }
        catch (IOException e) when (e.InnerException is AddressInUseException)
        {
            await Console.Error.WriteLineAsync($"{string.Join(", ", ListeningAddress.Stated(app.Configuration))} is in use already, perhaps by another window of this program. Choose another port, such as --urls http://127.0.0.1:5211.");
            return 3;
        }
        catch (InvalidDataException e)
        {
            await Console.Error.WriteLineAsync(e.Message);
            return 3;
        }

        var addresses = app.Services.GetRequiredService<IServer>().Features.Get<IServerAddressesFeature>()?.Addresses ?? [];
        Console.WriteLine($"The estimator is at {string.Join(", ", addresses)}");
        Console.WriteLine(app.Services.GetRequiredService<DataPlace>().Sentence);
        Console.WriteLine("Ctrl+C ends it. A planning aid: no substitute for a licensed electrician or the authority having jurisdiction.");
        await app.WaitForShutdownAsync();
        return 0;
    }
}
