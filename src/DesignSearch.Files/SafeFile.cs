using System.Text;

namespace DesignSearch.Files;

/// <summary>Writes files so that a reader sees the old content or the new, never half of either.</summary>
public static class SafeFile
{
    private static readonly UTF8Encoding Plain = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes text as UTF-8 beside the target, flushes it to the disk and renames it into place.</summary>
    /// <param name="path">Target; its folder is made if it is missing.</param>
    /// <param name="text">The whole content.</param>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static void Write(string path, string text) => Write(path, Plain.GetBytes(text));

    /// <summary>As <see cref="Write(string, string)"/>, but a folder that is missing stays missing.</summary>
    /// <exception cref="DirectoryNotFoundException">There is no such folder.</exception>
    public static void WriteWhereFolderIs(string path, string text) => Put(path, Plain.GetBytes(text));

    /// <summary>Writes bytes beside the target, flushes them to the disk and renames them into place.</summary>
    /// <param name="path">Target; its folder is made if it is missing.</param>
    /// <param name="content">The whole content.</param>
    /// <exception cref="IOException">The folder cannot be written.</exception>
    /// <exception cref="UnauthorizedAccessException">The folder may not be written.</exception>
    public static void Write(string path, byte[] content)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(Path.GetFullPath(path))!);
        Put(path, content);
    }

    private static void Put(string path, byte[] content)
    {
        var beside = path + ".designsearch.tmp";
        // Through a link the bytes would go somewhere else.
        if (new FileInfo(beside).LinkTarget is not null)
            File.Delete(beside);
        try
        {
            FileLimit.Guard(path, () =>
            {
                using var stream = new FileStream(beside, FileMode.Create, FileAccess.Write, FileShare.None);
                stream.Write(content);
                stream.Flush(flushToDisk: true);
            });

            File.Move(beside, path, overwrite: true);
        }
        catch
        {
            TryDelete(beside);
            throw;
        }
    }

    private static void TryDelete(string path)
    {
        try
        {
            File.Delete(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The first failure is the one to report.
        }
    }
}
