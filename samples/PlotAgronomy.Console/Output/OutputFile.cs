namespace PlotAgronomy.Sample.Output;

/// <summary>A plain file that is written whole or not at all.</summary>
internal static class OutputFile
{
    /// <summary>Why a file is not written over, or null.</summary>
    /// <param name="file">The file to write.</param>
    /// <param name="input">The plan that is read and stays as it is; null where there is none.</param>
    internal static string? WhyNot(string file, string? input)
    {
        if (string.IsNullOrWhiteSpace(file))
        {
            return "the name of the file is empty";
        }

        if (Directory.Exists(file))
        {
            return "it is a folder";
        }

        if (input is not null && RealPath(file) == RealPath(input))
        {
            return "it is the plan that is read";
        }

        var there = new FileInfo(file);
        if (there.LinkTarget is not null)
        {
            return "it is a link";
        }

        return there.Exists ? WhyNotOver(file) : null;
    }

    /// <summary>Writes beside the file under a name of its own, then puts that in its place; nothing stays when it
    /// fails.</summary>
    internal static void Replace(string file, string text)
    {
        string whole = Path.GetFullPath(file);
        string draft = Path.Combine(Path.GetDirectoryName(whole)!, $".{Path.GetRandomFileName()}.part");
        bool isMine = false;
        try
        {
            using (var written = new FileStream(draft, FileMode.CreateNew, FileAccess.Write))
            {
                isMine = true;
                using var writer = new StreamWriter(written);
                writer.Write(text);
            }

            if (!OperatingSystem.IsWindows() && File.Exists(whole))
            {
                File.SetUnixFileMode(draft, File.GetUnixFileMode(whole));
            }

            File.Move(draft, whole, overwrite: true);
            isMine = false;
        }
        finally
        {
            if (isMine)
            {
                File.Delete(draft);
            }
        }
    }

    /// <summary>A file that may not be written, a pipe or a device: a pipe has no places, and a device, which looks like an
    /// empty file, has no length to set.</summary>
    private static string? WhyNotOver(string file)
    {
        try
        {
            using var there = File.OpenHandle(file, FileMode.Open, FileAccess.ReadWrite);
            using var stream = new FileStream(there, FileAccess.ReadWrite);
            if (!stream.CanSeek)
            {
                return "it is no plain file";
            }

            if (stream.Length == 0)
            {
                RandomAccess.SetLength(there, 0);
            }

            return null;
        }
        catch (UnauthorizedAccessException)
        {
            return "it is write-protected";
        }
        catch (Exception refused) when (refused is IOException or NotSupportedException or ArgumentException)
        {
            return "it is no plain file, or in use";
        }
    }

    /// <summary>The path with every link on the way followed.</summary>
    private static string RealPath(string path)
    {
        string whole = Path.GetFullPath(path);
        string? above = Path.GetDirectoryName(whole);
        if (above is null)
        {
            return whole;
        }

        string here = Path.Combine(RealPath(above), Path.GetFileName(whole));
        FileSystemInfo info = Directory.Exists(here) ? new DirectoryInfo(here) : new FileInfo(here);
        return info.LinkTarget is null ? here : info.ResolveLinkTarget(returnFinalTarget: true)?.FullName ?? here;
    }
}
