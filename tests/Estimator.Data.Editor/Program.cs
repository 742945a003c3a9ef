using Estimator.Data;
using Estimator.Data.Companies;
using Estimator.Data.Databases;
using Estimator.Data.Editor;
using Estimator.Data.Jobs;
using Microsoft.Extensions.DependencyInjection;

// A program of its own that tests start and kill: start ADDRESS, append ADDRESS COMPANY JOB RUN, sample ADDRESS.
// ADDRESS is the path of a SQLite file, or a PostgreSQL connection string.
var address = args[1].Contains('=', StringComparison.Ordinal) ? DatabaseAddress.Postgres(args[1]) : DatabaseAddress.Sqlite(args[1]);
var company = args.Length > 2 ? new CurrentCompany(long.Parse(args[2])) : CurrentCompany.Own;
await using var services = new ServiceCollection().AddSingleton(company).AddEstimatorData(address).BuildServiceProvider();
Console.WriteLine("ready");
switch (args[0])
{
    case "start":
        await services.GetRequiredService<DatabaseStart>().RunAsync();
        Console.WriteLine("started");
        break;
    case "append":
        await Appending.RunAsync(services.GetRequiredService<JobStore>(), args[3], args[4]);
        break;
    case "sample":
        await SampleDatabase.MakeAsync(services);
        break;
    default:
        throw new ArgumentException($"found '{args[0]}', start, append or sample is accepted.");
}
