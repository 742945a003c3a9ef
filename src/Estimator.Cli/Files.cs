namespace Estimator.Cli;

/// <summary>Reads and writes files; what is written stands whole or not at all.</summary>
internal static class Files
{
    private const long MostBytes = 50_000_000;

    internal static string Read(string path)
    {
        var file = new FileInfo(path);
        if (!file.Exists)
        {
            throw new WrongInputException($"{path}: there is no such file; the path of a readable file is accepted.");
        }

        return file.Length <= MostBytes
            ? File.ReadAllText(path)
            : throw new WrongInputException($"{path}: found {file.Length} bytes; a file to {MostBytes} bytes is accepted.");
    }

    internal static void Write(string path, string text, bool byteOrderMark = false)
    {
        var encoding = new System.Text.UTF8Encoding(byteOrderMark);
        Write(path, [.. encoding.GetPreamble(), .. encoding.GetBytes(text)]);
    }

    internal static void Write(string path, byte[] content)
    {
        var folder = Path.GetDirectoryName(Path.GetFullPath(path))!;
        if (!Directory.Exists(folder))
        {
            throw new WrongInputException($"{path}: there is no folder {folder}; a path in a folder that exists is accepted.");
        }

        var half = Path.Combine(folder, $".{Path.GetFileName(path)}.{Environment.ProcessId}.part");
        try
        {
            File.WriteAllBytes(half, content);
            File.Move(half, path, overwrite: true);
        }
        finally
        {
            File.Delete(half);
        }
    }
}
