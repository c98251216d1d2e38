namespace DesignSearch.Cli.Download;

/// <summary>Nothing of use came from a service; the message is the sentence for the person who asked.</summary>
/// <param name="sentence">What went wrong and what helps.</param>
/// <param name="mayPass">True where a second attempt may go better.</param>
public sealed class DownloadException(string sentence, bool mayPass = false) : Exception(sentence)
{
    /// <summary>True where a second attempt may go better.</summary>
    public bool MayPass { get; } = mayPass;
}
