namespace Estimator.Data.Databases;

/// <summary>Lets one program at a time start on a SQLite file.</summary>
/// <remarks>The operating system gives the lock back when its holder ends, however it ends; so it is never stale, unlike a row in a table.</remarks>
internal static class StartLock
{
    private const int Attempts = 1_200;
    private static readonly TimeSpan Pause = TimeSpan.FromMilliseconds(100);

    internal static async Task<FileStream> TakeAsync(string databaseFile, CancellationToken token)
    {
        for (var attempt = 1; ; attempt++)
        {
            try
            {
                return new FileStream(databaseFile + "-start", FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None, 1, FileOptions.DeleteOnClose);
            }
            catch (IOException) when (attempt < Attempts)
            {
                await Task.Delay(Pause, token);
            }
        }
    }
}
