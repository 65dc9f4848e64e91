; Offers the program for logs and schedules, beside the program that opens such files and without
; taking them from it: the extension's own key is given a name in OpenWithProgids and no default.
; Microsoft's documentation, "File Types" and "How to Include an Application on the Open With Dialog Box".

!define LOG_CLASS "Afterfire.Log"

!macro customInstall
  WriteRegStr SHELL_CONTEXT "Software\Classes\${LOG_CLASS}" "" "Temperature log"
  WriteRegStr SHELL_CONTEXT "Software\Classes\${LOG_CLASS}\DefaultIcon" "" "$appExe,0"
  WriteRegStr SHELL_CONTEXT "Software\Classes\${LOG_CLASS}\shell\open\command" "" '"$appExe" "%1"'
  WriteRegStr SHELL_CONTEXT "Software\Classes\.csv\OpenWithProgids" "${LOG_CLASS}" ""
  WriteRegStr SHELL_CONTEXT "Software\Classes\.json\OpenWithProgids" "${LOG_CLASS}" ""
  System::Call 'shell32::SHChangeNotify(i 0x08000000, i 0x1000, p 0, p 0)'
!macroend

!macro customUnInstall
  DeleteRegValue SHELL_CONTEXT "Software\Classes\.csv\OpenWithProgids" "${LOG_CLASS}"
  DeleteRegValue SHELL_CONTEXT "Software\Classes\.json\OpenWithProgids" "${LOG_CLASS}"
  DeleteRegKey SHELL_CONTEXT "Software\Classes\${LOG_CLASS}"
  System::Call 'shell32::SHChangeNotify(i 0x08000000, i 0x1000, p 0, p 0)'
!macroend
